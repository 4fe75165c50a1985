/** The one policy that may name a script's address: only addresses the build made go through it. */
interface ScriptPolicy {
  createScriptURL(address: string): string;
}
interface PolicyFactory {
  createPolicy(name: string, rules: { readonly createScriptURL: (address: string) => string }): ScriptPolicy;
}

const factory = (globalThis as { readonly trustedTypes?: PolicyFactory }).trustedTypes;
const policy = factory?.createPolicy('tg-scripts', { createScriptURL: (address) => address });

/** An address as the browser wants it told: checked by the policy where there is one. */
const allowed = (builtAddress: string): string => (policy ? policy.createScriptURL(builtAddress) : builtAddress);

/** Starts one of our own module workers. */
export const startWorker = (builtAddress: string): Worker => new Worker(allowed(builtAddress), { type: 'module' });

/** Registers the site's own service worker, which the build writes to this address. */
export const registerServiceWorker = (container: ServiceWorkerContainer): Promise<ServiceWorkerRegistration> =>
  container.register(allowed('/sw.js'));
