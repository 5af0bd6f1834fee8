import { useState } from 'react';
import { Link } from 'wouter';
import { useGarden } from '../../app/garden-context.tsx';
import { download, fileName } from '../../data/download.ts';
import { NoAnswer, Refused } from '../../data/garden-store.ts';
import { useStore } from '../../data/store-context.tsx';
import { Button } from '../../kit/button.tsx';
import { Field } from '../../kit/field.tsx';
import { Icon } from '../../kit/icon.tsx';
import page from '../../kit/page.module.css';
import { Section } from '../../kit/section.tsx';
import { useToast } from '../../kit/toast.tsx';
import { label } from '../../words/label.ts';
import styles from './settings.module.css';

/** The whole record out as one file, and such a file in. */
export function GardenFile() {
  const { record } = useGarden();
  const store = useStore();
  const toast = useToast();
  const [problem, setProblem] = useState<string>();
  const [came, setCame] = useState<string>();
  const save = async () => {
    try {
      const text = await store.exportGarden(record.id);
      download(fileName(record.document.garden, 'json'), 'application/json', text);
    } catch (error) {
      toast({ text: reasonOf(error) });
    }
  };
  const read = async (file: File) => {
    setCame(undefined);
    setProblem(undefined);
    try {
      setCame(await store.importGarden(await file.text()));
    } catch (error) {
      setProblem(label('web.file-bad', { reason: reasonOf(error) }));
    }
  };
  return (
    <Section id="file" title="web.file-title">
      <div className={page.sheet}>
        <p>{label('web.file-text')}</p>
        <div>
          <Button onClick={() => void save()}>
            <Icon name="down" size={20} />
            {label('web.file-export')}
          </Button>
        </div>
        <Field label={label('web.file-import')} hint={label('web.file-import-hint')} problem={problem}>
          {(props) => (
            <input
              {...props}
              className={`${props.className} ${styles.file}`}
              type="file"
              accept=".json,application/json"
              onChange={(event) => {
                const file = event.target.files?.[0];
                if (file !== undefined) void read(file);
              }}
            />
          )}
        </Field>
        <p role="status">
          {came === undefined ? null : (
            <>
              {label('web.file-imported')} <Link href={`~/g/${came}`}>{label('web.file-open')}</Link>
            </>
          )}
        </p>
      </div>
    </Section>
  );
}

function reasonOf(error: unknown): string {
  if (error instanceof NoAnswer) return label('web.no-answer');
  if (error instanceof Refused) return error.problems[0]?.message ?? error.message;
  return error instanceof Error ? error.message : String(error);
}
