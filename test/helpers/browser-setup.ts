// Lit's development build warns once a page; the tests know which build they run.
(globalThis as { litIssuedWarnings?: Set<string> }).litIssuedWarnings = new Set(['dev-mode']);
