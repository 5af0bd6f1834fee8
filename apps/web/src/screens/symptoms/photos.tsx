import { useId, useState } from 'react';
import { useStore } from '../../data/store-context.tsx';
import button from '../../kit/button.module.css';
import { Button } from '../../kit/button.tsx';
import { Callout } from '../../kit/callout.tsx';
import page from '../../kit/page.module.css';
import { day, label } from '../../words/label.ts';
import { PhotoList } from './photo-list.tsx';
import styles from './symptoms.module.css';

interface Props {
  /** Names of the photos that are kept already. */
  readonly photos: readonly string[];
  readonly onChange: (photos: readonly string[]) => void;
  readonly plant: string;
  readonly date: string;
}

/** Takes photos with the phone's camera, or from its store, and keeps each at once. */
export function Photos({ photos, onChange, plant, date }: Props) {
  const { served } = useStore();
  const id = useId();
  const [busy, setBusy] = useState(false);
  const [failed, setFailed] = useState<string>();
  if (served === undefined) return <p className={page.small}>{label('web.symptoms-photo-none')}</p>;
  const keep = async (files: readonly File[]) => {
    setBusy(true);
    setFailed(undefined);
    const kept: string[] = [];
    try {
      for (const file of files) kept.push(await served.keepPhoto(file));
    } catch (error) {
      setFailed(error instanceof Error ? error.message : String(error));
    }
    onChange([...new Set([...photos, ...kept])]);
    setBusy(false);
  };
  return (
    <div className={styles.photos}>
      <p className={page.label}>{label('web.symptoms-photo')}</p>
      <p className={page.small} id={`${id}-hint`}>
        {label('web.symptoms-photo-hint')}
      </p>
      {photos.length === 0 ? null : (
        <PhotoList
          photos={photos}
          describe={(number) =>
            label('web.symptoms-photo-alt', { number, plant: plant || label('web.symptoms-a-plant'), date: day(date) })
          }
        >
          {(photo, number) => (
            <Button
              look="quiet"
              aria-label={label('web.symptoms-photo-remove', { number })}
              onClick={() => onChange(photos.filter((each) => each !== photo))}
            >
              <span aria-hidden="true">×</span>
            </Button>
          )}
        </PhotoList>
      )}
      <div>
        <label className={`${button.button} ${button.plain} ${styles.file}`}>
          <input
            type="file"
            accept="image/jpeg,image/png,image/webp,image/avif"
            multiple
            disabled={busy}
            className="hidden-text"
            aria-describedby={`${id}-hint`}
            onChange={(event) => {
              void keep([...(event.target.files ?? [])]);
              event.target.value = '';
            }}
          />
          {label(busy ? 'web.symptoms-photo-busy' : 'web.symptoms-photo-add')}
        </label>
      </div>
      {failed === undefined ? null : (
        <Callout kind="wrong">
          <p role="alert">{label('web.symptoms-photo-failed', { reason: failed })}</p>
        </Callout>
      )}
    </div>
  );
}
