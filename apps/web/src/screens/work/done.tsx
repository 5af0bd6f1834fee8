import { useGarden } from '../../app/garden-context.tsx';
import { useThings } from '../../data/use-things.ts';
import { remove } from '../../data/write.ts';
import { Button } from '../../kit/button.tsx';
import { Failure } from '../../kit/failure.tsx';
import { Loading } from '../../kit/loading.tsx';
import page from '../../kit/page.module.css';
import { Section } from '../../kit/section.tsx';
import { day, label } from '../../words/label.ts';
import styles from './work.module.css';

/** Work ticked off, newest first, with what was really used; each can be taken back. */
export function Done() {
  const { planned, record, write } = useGarden();
  const fetched = useThings();
  if (fetched.state === 'loading') return <Loading />;
  if (fetched.state === 'failed') return <Failure error={fetched.error} retry={() => void fetched.reload()} />;
  const tasks = [...fetched.value.things.values()]
    .flatMap((thing) => (thing.kind === 'task' && !thing.removed ? [thing] : []))
    .sort((a, b) => b.content.date.localeCompare(a.content.date) || b.number - a.number);
  return (
    <Section id="done" title="web.work-done-title">
      {tasks.length === 0 ? (
        <p className={page.soft}>{label('web.work-done-none')}</p>
      ) : (
        <ul className={`${page.plain} ${styles.done}`}>
          {tasks.map(({ id, place, content }) => (
            <li key={id} className={page.row}>
              <span>
                {label('web.work-done-line', {
                  place: planned.places.find((each) => each.id === place)?.name ?? record.document.garden,
                  task: content.task,
                })}
                <span className={styles.when}>
                  {day(content.date)}
                  {content.used === undefined
                    ? null
                    : `, ${label('web.work-done-used', { amount: content.used.amount, material: content.used.material })}`}
                </span>
              </span>
              <Button
                look="quiet"
                onClick={() =>
                  void write([remove(record.id, id)], label('web.work-taken-back', { task: content.task }))
                }
              >
                {label('web.work-take-back')}
              </Button>
            </li>
          ))}
        </ul>
      )}
    </Section>
  );
}
