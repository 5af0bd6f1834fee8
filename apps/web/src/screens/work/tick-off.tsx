import type { Application } from '@sorrel/engine/plan';
import { useRef, useState } from 'react';
import { useGarden } from '../../app/garden-context.tsx';
import { add, correct } from '../../data/write.ts';
import type { PlannedPlace } from '../../engine/garden-plan.ts';
import { Button } from '../../kit/button.tsx';
import page from '../../kit/page.module.css';
import { joinQuantity, Quantity } from '../../kit/quantity.tsx';
import { Select, TextInput } from '../../kit/text-input.tsx';
import { label } from '../../words/label.ts';
import { afterUse, materialName } from './stock.ts';
import { checkUsed, firstAmount, massUnits } from './used.ts';

interface Props {
  readonly planned: PlannedPlace;
  readonly application: Application;
  /** Called when it is ticked off or given up. */
  readonly onClose: () => void;
}

/** Ticks work off with what was really used, which the plan then counts with. */
export function TickOff({ planned, application, onClose }: Props) {
  const { record, speaker, write, planned: all } = useGarden();
  const { settings, products } = all.read.garden;
  const own = products.find((product) => product === application.product);
  const [amount, setAmount] = useState(() => firstAmount(application.mass, speaker.units));
  // A product of her own goes by its name; one of the almanac by its key.
  const [material, setMaterial] = useState(own?.name ?? application.product.material);
  const [date, setDate] = useState(settings.today);
  const [tried, setTried] = useState(false);
  const form = useRef<HTMLFormElement>(null);
  const used = { date, material, amount: joinQuantity(amount.value, amount.unit) ?? '' };
  const faults = checkUsed(record, used, settings.today);
  const faultAt = (field: string) => (tried ? faults.get(field) : undefined);
  const choices = [
    { value: own?.name ?? application.product.material, label: application.product.name },
    ...products
      .filter((product) => product !== application.product)
      .map((product) => ({ value: product.name, label: product.name })),
  ];
  const stockAfter = () => {
    const materials = record.document.materials ?? [];
    const index = materials.findIndex((entry) => materialName(entry) === material);
    const [entry, id] = [materials[index], record.from.materials[index]];
    const after = entry === undefined ? undefined : afterUse(entry, used.amount);
    return after === undefined || id === undefined ? undefined : { id, entry: after };
  };
  const save = async () => {
    setTried(true);
    if (faults.size > 0) {
      requestAnimationFrame(() => form.current?.querySelector<HTMLElement>('[aria-invalid]')?.focus());
      return;
    }
    const product = choices.find((each) => each.value === material)?.label ?? material;
    const task = label('web.work-spread-task', { product, number: application.number });
    const stock = stockAfter();
    const about = { place: planned.name, amount: used.amount, product };
    // The stock is written right behind the task, so that taking the task back can give it back.
    const done = await write(
      [
        add(record.id, 'task', { date, task, used: { material, amount: used.amount } }, planned.id),
        ...(stock === undefined ? [] : [correct(record.id, stock.id, 'material', stock.entry)]),
      ],
      stock === undefined
        ? label('web.work-saved', about)
        : label('web.work-saved-stock', { ...about, left: stock.entry.onHand ?? '' }),
    );
    if (done) onClose();
  };
  return (
    <form
      ref={form}
      className={page.page}
      noValidate
      aria-label={label('web.work-what-used')}
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      <div className={page.grid}>
        <Quantity
          label={label('web.work-used')}
          units={massUnits[speaker.units]}
          {...amount}
          onChange={(value, unit) => setAmount({ value, unit })}
          problem={faultAt('amount')}
        />
        <Select
          label={label('web.work-material')}
          value={material}
          onChange={setMaterial}
          options={choices}
          problem={faultAt('material')}
        />
        <TextInput
          label={label('web.work-day')}
          type="date"
          max={settings.today}
          value={date}
          onChange={setDate}
          problem={faultAt('date')}
        />
      </div>
      <div className={page.actions}>
        <Button type="submit" look="main">
          {label('web.work-save')}
        </Button>
        <Button look="quiet" onClick={onClose}>
          {label('web.cancel')}
        </Button>
      </div>
    </form>
  );
}
