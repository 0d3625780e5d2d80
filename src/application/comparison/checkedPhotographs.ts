import { failure } from '../../foundation/failure.ts';
import { fail, type Result } from '../../foundation/result.ts';
import { argumentsFailure, picturesFailure } from './checkInput.ts';
import { type DecodedPhotographs, decodeAll } from './decodeAll.ts';
import type { MeasureInput, MeasuringHooks } from './measureInput.ts';

/**
 * All photographs of a measurement, decoded, once what was given is known to be sound and to lie on them.
 * @returns failures of input, and `stopped`
 */
export async function checkedPhotographs(
  input: MeasureInput,
  { stopped }: Pick<MeasuringHooks, 'stopped'>,
): Promise<Result<DecodedPhotographs>> {
  const unusable = argumentsFailure(input);
  if (unusable) return fail(unusable);
  const decoded = await decodeAll(input);
  if (!decoded.ok) return decoded;
  const misplaced = picturesFailure(input, decoded.value);
  if (misplaced) return fail(misplaced);
  return stopped() ? fail(failure('stopped')) : decoded;
}
