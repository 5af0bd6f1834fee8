import { bagsOf } from '@sorrel/almanac/bags';
import type { ShoppingLine } from '@sorrel/engine/plan';
import { Link } from 'wouter';
import { useGarden } from '../../app/garden-context.tsx';
import { useStore } from '../../data/store-context.tsx';
import { Memory } from '../../kit/memory.tsx';
import page from '../../kit/page.module.css';
import { Section } from '../../kit/section.tsx';
import { counted, label } from '../../words/label.ts';
import styles from './work.module.css';

/** What to buy for the first step of each place, in whole bags where the bag is known. */
export function Shopping() {
  const { planned, record, speaker } = useGarden();
  const { served } = useStore();
  const lines = planned.shopping;
  const sum = lines.reduce((total, line) => total + (line.cost ?? 0), 0);
  return (
    <Section id="shopping" title="web.shop-title">
      <p className={page.soft}>{label('web.shop-lead')}</p>
      {lines.length === 0 ? (
        <p>{label('web.shop-none')}</p>
      ) : (
        <>
          <ul className={`${page.plain} ${styles.shop}`}>
            {lines.map((line) => (
              <li key={`${line.product.material} ${line.product.name}`}>
                <span className={styles.product}>{line.product.name}</span>
                <span className={styles.buy}>
                  <Buy line={line} />
                </span>
                <span className={page.small}>
                  {label('web.shop-need', { amount: speaker.weight(line.needed) })}
                  {line.onHand > 0 ? `, ${label('web.mat-line-have', { amount: speaker.weight(line.onHand) })}` : null}
                </span>
                <span className={styles.cost}>{line.cost === undefined ? null : speaker.money(line.cost)}</span>
              </li>
            ))}
          </ul>
          {sum > 0 ? <p className={page.label}>{label('web.shop-total', { sum: speaker.money(sum) })}</p> : null}
          {lines.some((line) => line.bags === undefined) ? (
            <p className={page.small}>
              <Link href="/settings">{label('web.shop-no-bag')}</Link>
            </p>
          ) : null}
          {served === undefined ? null : (
            <p className="no-print">
              <a href={served.paper(record.id, 'shopping.csv', { units: speaker.units })}>{label('web.shop-table')}</a>
            </p>
          )}
        </>
      )}
    </Section>
  );
}

function Buy({ line: { product, buy, bags } }: { readonly line: ShoppingLine }) {
  const { speaker } = useGarden();
  if (buy <= 0) return label('web.shop-enough');
  if (bags !== undefined && product.bag !== undefined)
    return counted('web.shop-bags', bags, { size: speaker.weight(product.bag.mass) });
  const usual = bagsOf(product.material)[0];
  return (
    <>
      {speaker.weight(buy)}
      {usual === undefined ? null : (
        <span className={styles.when}>
          {label('web.shop-usual', { package: usual.package, low: usual.usdLow, high: usual.usdHigh })} <Memory />
        </span>
      )}
    </>
  );
}
