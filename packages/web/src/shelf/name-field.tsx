import { useState } from 'react';
import { Form, Input, Label, TextField } from 'react-aria-components';
import { Button } from '../ui/button.tsx';

interface NameFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onSave: (name: string) => Promise<void>;
}

/** One line for a name, with its own way to keep it. */
export function NameField({ label, value, onSave }: NameFieldProps) {
  const [name, setName] = useState(value);
  const save = async () => {
    await onSave(name.trim());
    if (value === '') setName('');
  };
  return (
    <Form
      className="name-field"
      onSubmit={(event) => {
        event.preventDefault();
        if (name.trim() !== value) void save();
      }}
    >
      <TextField className="field" value={name} onChange={setName} maxLength={80}>
        <Label>{label}</Label>
        <Input className="input" />
      </TextField>
      <Button type="submit" isDisabled={name.trim() === value}>
        Keep
      </Button>
    </Form>
  );
}
