import type { Arrangement } from '@sorrel/engine/placing';
import { useState } from 'react';
import { useGarden } from '../../app/garden-context.tsx';
import { downloadBlob, fileName } from '../../data/download.ts';
import { useStore } from '../../data/store-context.tsx';
import { Button } from '../../kit/button.tsx';
import { Icon } from '../../kit/icon.tsx';
import page from '../../kit/page.module.css';
import { Section } from '../../kit/section.tsx';
import { useToast } from '../../kit/toast.tsx';
import { label } from '../../words/label.ts';

/** The arrangement as a handout, typeset by the server, or this page on the browser's own printer. */
export function OnPaper({ arrangement }: { readonly arrangement: Arrangement }) {
  const { record, speaker } = useGarden();
  const { served } = useStore();
  const toast = useToast();
  const [busy, setBusy] = useState(false);
  const get = async () => {
    setBusy(true);
    try {
      const pdf = await served?.arrangementPdf(record.id, speaker.units, arrangement);
      if (pdf !== undefined) downloadBlob(fileName(record.document.garden, 'pdf'), pdf);
    } catch (error) {
      toast({ text: label('web.refused', { reason: error instanceof Error ? error.message : String(error) }) });
    } finally {
      setBusy(false);
    }
  };
  return (
    <div className="no-print">
      <Section id="paper" title="web.placing-paper">
        <div className={page.actions}>
          {served === undefined ? null : (
            <Button disabled={busy} onClick={() => void get()}>
              {label('web.placing-pdf')}
            </Button>
          )}
          <Button onClick={() => window.print()}>
            <Icon name="print" size={20} />
            {label('web.placing-print')}
          </Button>
        </div>
      </Section>
    </div>
  );
}
