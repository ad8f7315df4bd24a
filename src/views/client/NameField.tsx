import { type Ref, useId } from 'react';

interface NameFieldProps {
  label: string;
  value: string;
  /** what it is called where the field is left empty */
  placeholder: string;
  /** another choice is called so */
  taken: boolean;
  onChange(text: string): void;
  ref?: Ref<HTMLInputElement>;
}

/** The field of a choice's name, and a word where it is taken. */
export function NameField({ label, value, placeholder, taken, onChange, ref }: NameFieldProps) {
  const id = useId();
  return (
    <>
      <label htmlFor={id}>{label}</label>
      <input
        {...{ id, ref, value, placeholder }}
        maxLength={60}
        aria-invalid={taken}
        aria-describedby={`${id}-taken`}
        onChange={({ target }) => onChange(target.value)}
      />
      <span id={`${id}-taken`} role="status">
        {taken && 'There is a choice of that name already.'}
      </span>
    </>
  );
}
