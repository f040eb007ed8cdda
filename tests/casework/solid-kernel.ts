/** The kernel of solids for tests, loaded once. */
import type { SolidKernel } from 'casewright-shared/solids';
import start from 'manifold-3d/manifold.js';

let loaded: Promise<SolidKernel> | undefined;

export function solidKernel(): Promise<SolidKernel> {
    loaded ??= start().then((kernel) => {
        kernel.setup();
        return kernel;
    });
    return loaded;
}
