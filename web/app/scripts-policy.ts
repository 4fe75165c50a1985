/** The one policy that may name a script's address: only addresses the build made go through it. */
interface ScriptPolicy {
  createScriptURL(address: string): string;
}
interface PolicyFactory {
  createPolicy(name: string, rules: { readonly createScriptURL: (address: string) => string }): ScriptPolicy;
}

const factory = (globalThis as { readonly trustedTypes?: PolicyFactory }).trustedTypes;
const policy = factory?.createPolicy('tg-scripts', { createScriptURL: (address) => address });

/** Starts one of our own module workers. */
export const startWorker = (builtAddress: string): Worker =>
  new Worker(policy ? policy.createScriptURL(builtAddress) : builtAddress, { type: 'module' });
