import { followedSentence, nextBillSentence } from '../../words/following.ts';
import { say } from '../../words/say.ts';
import type { FollowingSeries } from './series.ts';

export const followingName = () => say('Estimated and metered, month by month');

export function followingSentence({ months, pencePerKWh }: FollowingSeries): string {
  return `${followedSentence(months, pencePerKWh)} ${nextBillSentence(months)}`;
}
