import type { Arrangement } from '@sorrel/engine/placing';
import { useState } from 'react';
import { useGarden } from '../../app/garden-context.tsx';
import { useThings } from '../../data/use-things.ts';
import { Button } from '../../kit/button.tsx';
import page from '../../kit/page.module.css';
import { Section } from '../../kit/section.tsx';
import { Select } from '../../kit/text-input.tsx';
import { useToast } from '../../kit/toast.tsx';
import { counted, label } from '../../words/label.ts';
import type { Draft } from './draft.ts';
import { takingOver } from './taking-over.ts';

interface Props {
  readonly arrangement: Arrangement;
  readonly seasons: number;
  readonly draft: Draft;
}

/** Writes the plants of one season into the places. */
export function TakeOver({ arrangement, seasons, draft }: Props) {
  const { planned, record, write } = useGarden();
  const [season, setSeason] = useState('1');
  const things = useThings();
  const toast = useToast();
  const take = async () => {
    if (things.state !== 'ready') return;
    const { entries, places } = takingOver({
      arrangement,
      season: Number(season),
      planned: planned.places,
      wished: draft.wishes.map(({ plant }) => plant),
      garden: record.id,
      things: things.value.things,
      today: planned.read.garden.settings.today,
    });
    if (entries.length === 0) toast({ text: label('web.placing-take-same') });
    else await write(entries, counted('web.placing-taken', places));
  };
  return (
    <Section id="take" title="web.placing-take">
      <div className={`${page.sheet} ${page.narrow} no-print`}>
        <p>{label('web.placing-take-lead')}</p>
        {seasons === 1 ? null : (
          <Select
            label={label('web.placing-take-season')}
            value={season}
            onChange={setSeason}
            options={Array.from({ length: seasons }, (_, at) => ({
              value: String(at + 1),
              label: label('web.placing-col-season', { season: at + 1 }),
            }))}
          />
        )}
        <div className={page.actions}>
          <Button disabled={things.state !== 'ready'} onClick={() => void take()}>
            {label('web.placing-take-button')}
          </Button>
        </div>
      </div>
    </Section>
  );
}
