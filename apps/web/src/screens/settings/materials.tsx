import { materialOf } from '@sorrel/almanac/materials';
import { useRef, useState } from 'react';
import { useGarden } from '../../app/garden-context.tsx';
import { remove } from '../../data/write.ts';
import { Button } from '../../kit/button.tsx';
import { Icon } from '../../kit/icon.tsx';
import page from '../../kit/page.module.css';
import { Section } from '../../kit/section.tsx';
import { label } from '../../words/label.ts';
import { checkMaterial, type MaterialEntry } from './material-draft.ts';
import { MaterialForm } from './material-form.tsx';
import styles from './settings.module.css';

/** The bags she has or can buy, with the figures of their own labels. */
export function Materials() {
  const { planned, record, write } = useGarden();
  const [open, setOpen] = useState<string>();
  const place = useRef<HTMLDivElement>(null);
  const today = planned.read.garden.settings.today;
  const materials = record.document.materials ?? [];
  const close = () => {
    setOpen(undefined);
    // Whoever used the keyboard goes on where she was.
    requestAnimationFrame(() => place.current?.querySelector<HTMLElement>('button')?.focus());
  };
  return (
    <Section id="materials" title="web.mat-title">
      <div ref={place} className={page.page}>
        <p className={page.soft}>{label(materials.length === 0 ? 'web.mat-none' : 'web.mat-lead')}</p>
        {materials.length === 0 ? null : (
          <ul className={`${page.plain} ${styles.materials}`}>
            {materials.map((entry, index) => {
              const id = record.from.materials[index] ?? String(index);
              const name = entry.name ?? materialOf(entry.material)?.name ?? entry.material;
              return (
                <li key={id}>
                  {open === id ? (
                    <MaterialForm id={id} entry={entry} onClose={close} />
                  ) : (
                    <div className={page.row}>
                      <MaterialLine entry={entry} name={name} today={today} />
                      <span className={page.actions}>
                        <Button onClick={() => setOpen(id)} aria-label={`${label('web.mat-edit')}: ${name}`}>
                          {label('web.mat-edit')}
                        </Button>
                        <Button
                          look="quiet"
                          aria-label={`${label('web.mat-remove')}: ${name}`}
                          onClick={() => void write([remove(record.id, id)], label('web.mat-removed', { name }))}
                        >
                          {label('web.mat-remove')}
                        </Button>
                      </span>
                    </div>
                  )}
                </li>
              );
            })}
          </ul>
        )}
        {open === 'new' ? (
          <MaterialForm onClose={close} />
        ) : (
          <div>
            <Button onClick={() => setOpen('new')}>
              <Icon name="plus" size={20} />
              {label('web.mat-add')}
            </Button>
          </div>
        )}
      </div>
    </Section>
  );
}

interface LineProps {
  readonly entry: MaterialEntry;
  readonly name: string;
  readonly today: string;
}

function MaterialLine({ entry, name, today }: LineProps) {
  const { record, speaker } = useGarden();
  const row = materialOf(entry.material);
  const { product, faults } = checkMaterial(entry, today);
  const organic = record.document.certifiedOrganic === true || record.document.certifiedOrganic === 'yes';
  const parts =
    product === undefined
      ? [...faults.values()]
      : [
          ...(product.onHand === undefined
            ? []
            : [label('web.mat-line-have', { amount: speaker.weight(product.onHand) })]),
          ...(product.bag === undefined
            ? []
            : product.bag.price === undefined
              ? [label('web.mat-line-bag', { size: speaker.weight(product.bag.mass) })]
              : [
                  label('web.mat-line-bag-price', {
                    size: speaker.weight(product.bag.mass),
                    price: speaker.money(product.bag.price),
                  }),
                ]),
          label(product.currencyBasis === 'label' ? 'web.mat-line-label' : 'web.mat-line-assumed'),
          ...(organic && row !== undefined ? [label(`web.mat-organic-${row.organic}`)] : []),
        ];
  return (
    <span>
      <strong>{name}</strong>
      <br />
      <span className={page.small}>{parts.join('; ')}</span>
    </span>
  );
}
