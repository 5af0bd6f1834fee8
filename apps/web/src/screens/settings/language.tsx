import page from '../../kit/page.module.css';
import { Section } from '../../kit/section.tsx';
import { Select } from '../../kit/text-input.tsx';
import { label, language, languages } from '../../words/label.ts';

/** The languages there are words in. */
export function Language() {
  return (
    <Section id="language" title="web.lang-title">
      <div className={page.sheet}>
        <Select
          label={label('web.lang')}
          hint={label('web.lang-text')}
          value={language}
          onChange={() => {}}
          options={languages.map((value) => ({ value, label: label(`web.lang-${value}`) }))}
        />
      </div>
    </Section>
  );
}
