import type { ThingOf } from '@sorrel/store/record';
import { useGarden } from '../../app/garden-context.tsx';
import { useThings } from '../../data/use-things.ts';
import { correct, remove } from '../../data/write.ts';
import { Button } from '../../kit/button.tsx';
import { Failure } from '../../kit/failure.tsx';
import { Loading } from '../../kit/loading.tsx';
import page from '../../kit/page.module.css';
import { Section } from '../../kit/section.tsx';
import { day, label } from '../../words/label.ts';
import { materialName, takenWith, withStock } from './stock.ts';
import styles from './work.module.css';

/** Work ticked off, newest first, with what was really used; each can be taken back. */
export function Done() {
  const { planned, record, write } = useGarden();
  const fetched = useThings();
  if (fetched.state === 'loading') return <Loading />;
  if (fetched.state === 'failed') return <Failure error={fetched.error} retry={() => void fetched.reload()} />;
  const { entries, things } = fetched.value;
  const takeBack = (task: ThingOf<'task'>) => {
    const taken = takenWith(entries, task);
    const bag = taken === undefined ? undefined : things.get(taken.material);
    const back =
      taken === undefined || bag?.kind !== 'material' || bag.removed ? undefined : withStock(bag.content, taken.mass);
    const name = { task: task.content.task };
    return write(
      [
        remove(record.id, task.id),
        ...(back === undefined || bag === undefined ? [] : [correct(record.id, bag.id, 'material', back)]),
      ],
      back === undefined
        ? label('web.work-taken-back', name)
        : label('web.work-taken-back-stock', { ...name, left: back.onHand ?? '', material: materialName(back) }),
    );
  };
  const tasks = [...things.values()]
    .flatMap((thing) => (thing.kind === 'task' && !thing.removed ? [thing] : []))
    .sort((a, b) => b.content.date.localeCompare(a.content.date) || b.number - a.number);
  return (
    <Section id="done" title="web.work-done-title">
      {tasks.length === 0 ? (
        <p className={page.soft}>{label('web.work-done-none')}</p>
      ) : (
        <ul className={`${page.plain} ${styles.done}`}>
          {tasks.map((task) => (
            <li key={task.id} className={page.row}>
              <span>
                {label('web.work-done-line', {
                  place: planned.places.find(({ id }) => id === task.place)?.name ?? record.document.garden,
                  task: task.content.task,
                })}
                <span className={styles.when}>
                  {day(task.content.date)}
                  {task.content.used === undefined ? null : `, ${label('web.work-done-used', task.content.used)}`}
                </span>
              </span>
              <Button look="quiet" onClick={() => void takeBack(task)}>
                {label('web.work-take-back')}
              </Button>
            </li>
          ))}
        </ul>
      )}
    </Section>
  );
}
