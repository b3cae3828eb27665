/** Why something was not done, read out at once; nothing where nothing went wrong. */
export const Refused = ({ text }: { readonly text: string | null }) =>
  text ? (
    <p className="refusal" role="alert">
      {text}
    </p>
  ) : null;
