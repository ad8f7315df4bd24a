interface MarkPlusMinusProps {
  mark: { plusMinus: { text: string }; scribe: boolean };
}

/** ± of a mark, with a star where it is too uncertain to cut to the line. */
export const MarkPlusMinus = ({ mark: { plusMinus, scribe } }: MarkPlusMinusProps) => (
  <>
    {plusMinus.text}
    {scribe && (
      <>
        {' '}
        <abbr title="leave extra and scribe on dry fit">*</abbr>
      </>
    )}
  </>
);
