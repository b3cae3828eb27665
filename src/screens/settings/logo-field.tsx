import { useState } from 'react';
import { readAsAddress } from '../../charts/frame/read-as-address.ts';
import { DeskError } from '../../desk/desk-error.ts';
import { LARGEST_LOGO_BYTES, refuseLargeLogo } from '../../desk/limits.ts';
import { say } from '../../words/say.ts';
import { FileButton } from '../shared/file-button.tsx';
import { describeFailure } from '../state/describe-failure.ts';

/** A file that begins well may still be cut off: what cannot be painted here is not printed either. */
async function refuseBroken(address: string): Promise<void> {
  const picture = new Image();
  picture.src = address;
  await picture.decode().catch(() => {
    throw new DeskError({
      code: 'logo-broken',
      message: say('This logo cannot be shown; the file may be incomplete.'),
      remedy: say('Save the logo again as PNG and choose that file.'),
    });
  });
}

/** The installer's own logo, as it will be printed; chosen, replaced or taken away. */
export function LogoField(props: {
  readonly logo: string;
  /** Keeps the logo and answers it as kept; an empty one takes it away. */
  readonly onKeep: (address: string) => Promise<string>;
}) {
  const { logo, onKeep } = props;
  const [refusal, setRefusal] = useState<string | null>(null);
  const keep = async (find: () => Promise<string>) => {
    setRefusal(null);
    try {
      const kept = await onKeep(await find());
      if (kept !== '') await refuseBroken(kept);
    } catch (reason) {
      if (reason instanceof DeskError && reason.code === 'logo-broken') await onKeep(logo);
      setRefusal(say('Not saved. {reason}', { reason: describeFailure(reason) }));
    }
  };
  const read = async (file: File) => {
    if (file.size > LARGEST_LOGO_BYTES) throw refuseLargeLogo(file.size);
    return readAsAddress(file).catch((reason) => {
      throw reason ?? new Error(say('The file cannot be read.'));
    });
  };
  return (
    <fieldset className="field logo-field">
      <legend className="field-label">{say('Logo')}</legend>
      {logo ? <img className="logo" src={logo} alt={say('Your logo')} /> : null}
      <div className="pick-row">
        <FileButton
          label={logo ? say('Another logo …') : say('Choose a logo …')}
          accept="image/png,image/jpeg"
          onFile={(file) => void keep(() => read(file))}
        />
        {logo ? (
          <button type="button" onClick={() => void keep(async () => '')}>
            {say('Remove')}
          </button>
        ) : null}
      </div>
      <p className="field-note">
        {say(
          'PNG or JPEG, up to {size} kB. Printed on the first page from now on; the figures of saved estimates stay as they were.',
          { size: LARGEST_LOGO_BYTES / 1000 },
        )}
      </p>
      {refusal ? (
        <p className="field-refusal" role="alert">
          {refusal}
        </p>
      ) : null}
    </fieldset>
  );
}
