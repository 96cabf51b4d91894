import { ImageUp } from 'lucide-react';
import { FileTrigger } from 'react-aria-components';
import { mostPictureBytes } from '../../../core/documents/picture.ts';
import { attempt } from '../../host/attempt.ts';
import { toBase64 } from '../../host/base64.ts';
import { useAnswer } from '../../host/queries.ts';
import { Answer } from '../../kit/answer.tsx';
import { Button } from '../../kit/button.tsx';
import { notify } from '../../kit/notices.tsx';
import { Panel } from '../../kit/panel.tsx';

const mostKb = mostPictureBytes / 1024;

/** The shop's logo at the head of every paper: a PNG or JPEG. */
export function LogoPanel() {
  const answer = useAnswer('settings.logo', {});
  return (
    <Panel title="Logo">
      <p className="panel-note">
        A PNG or JPEG of at most {mostKb} KB, printed up to 1-1/2 in. wide left of the shop's name. Papers
        that were sent keep the logo they had.
      </p>
      <Answer query={answer}>
        {({ logo }) => (
          <div className="logo-row">
            {logo === null ? (
              <p className="muted">No logo yet.</p>
            ) : (
              <img
                className="logo-picture"
                src={`data:${logo.mediaType};base64,${logo.base64}`}
                alt={`The shop's logo, ${logo.widthPx} by ${logo.heightPx} points`}
              />
            )}
            <FileTrigger
              acceptedFileTypes={['image/png', 'image/jpeg']}
              onSelect={(files) => {
                const file = files?.[0];
                if (file !== undefined) void choose(file);
              }}
            >
              <Button icon={<ImageUp size={16} aria-hidden="true" />}>
                {logo === null ? 'Choose a logo' : 'Choose another logo'}
              </Button>
            </FileTrigger>
            {logo === null ? null : (
              <Button tone="quiet" onPress={() => void attempt('settings.putLogo', { base64: '' })}>
                Print without a logo
              </Button>
            )}
          </div>
        )}
      </Answer>
    </Panel>
  );
}

async function choose(file: File): Promise<void> {
  if (file.size > mostPictureBytes) {
    notify(`The picture is larger than ${mostKb} KB. Save it smaller and choose it again.`, 'problem');
    return;
  }
  const base64 = await toBase64(new Uint8Array(await file.arrayBuffer()));
  if ((await attempt('settings.putLogo', { base64 })) !== undefined)
    notify('The logo stands at the head of every paper from now on.');
}
