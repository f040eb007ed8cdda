/** Loads the kernel of solids in Node (Manifold, Apache License 2.0): half a megabyte that only some commands need. */
import type { SolidKernel } from 'casewright-shared/solids';

let loaded: Promise<SolidKernel> | undefined;

/** The kernel, once for a run. Its code for the machine lies beside its script: in its package, or among the bundled parts of the program. */
export function loadSolidKernel(): Promise<SolidKernel> {
    loaded ??= load();
    return loaded;
}

async function load(): Promise<SolidKernel> {
    const { default: start } = await import('manifold-3d/manifold.js');
    const kernel = await start();
    kernel.setup();
    return kernel;
}
