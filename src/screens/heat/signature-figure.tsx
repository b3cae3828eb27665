import { ChartFigure } from '../../charts/figure.tsx';
import { SignaturePicture } from '../../charts/signature/picture.tsx';
import { SIGNATURE_NAME, signaturePictureSentence } from '../../charts/signature/sentence.ts';
import { signatureTable } from '../../charts/signature/table.ts';
import type { Signature } from '../../model/appraisal/appraisal.ts';

export function SignatureFigure(props: { readonly signature: Signature }) {
  return null;
}
