import { useGarden } from '../../app/garden-context.tsx';
import page from '../../kit/page.module.css';
import { label } from '../../words/label.ts';
import { GardenFile } from './garden-file.tsx';
import { GardenForm } from './garden-form.tsx';
import { Language } from './language.tsx';
import { Materials } from './materials.tsx';

/** What holds for the whole garden: units, climate, laboratory, risk, materials, its file, the language. */
export default function Settings() {
  const { record } = useGarden();
  return (
    <div className={`${page.page} ${page.narrow}`}>
      <header className={page.head}>
        <h1>{label('web.set-title')}</h1>
        <p className={page.lead}>{label('web.set-lead')}</p>
      </header>
      {/* Drawn anew when the record changes, so that an undo shows in the fields. */}
      <GardenForm key={JSON.stringify({ ...record.document, places: undefined, materials: undefined })} />
      <Materials />
      <GardenFile />
      <Language />
    </div>
  );
}
