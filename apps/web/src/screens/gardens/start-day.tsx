import { useState } from 'react';
import { Button } from '../../kit/button.tsx';
import { TextInput } from '../../kit/text-input.tsx';
import { label } from '../../words/label.ts';
import styles from './gardens.module.css';
import { useBegin } from './use-begin.ts';

/** What a soil day is begun with: its name, its day, and where it is. */
export function StartDay() {
  const begin = useBegin();
  const [name, setName] = useState('');
  const [date, setDate] = useState(() => new Date().toISOString().slice(0, 10));
  const [where, setWhere] = useState('');
  const [tried, setTried] = useState(false);
  const start = () => {
    setTried(true);
    if (name.trim() === '' || date === '') return;
    const soilDay = { date, ...(where.trim() === '' ? {} : { where: where.trim() }) };
    void begin({ garden: name.trim(), soilDay }, '/');
  };
  return (
    <form
      className={styles.form}
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        start();
      }}
    >
      <TextInput
        label={label('web.day-start-name')}
        hint={label('web.day-start-name-hint')}
        problem={tried && name.trim() === '' ? label('web.day-start-name-missing') : undefined}
        value={name}
        onChange={setName}
      />
      <TextInput
        label={label('web.day-start-date')}
        type="date"
        problem={tried && date === '' ? label('web.day-start-date-missing') : undefined}
        value={date}
        onChange={setDate}
      />
      <TextInput
        label={label('web.day-start-where')}
        optional={label('web.optional')}
        value={where}
        onChange={setWhere}
      />
      <Button type="submit" look="main">
        {label('web.day-start-go')}
      </Button>
    </form>
  );
}
