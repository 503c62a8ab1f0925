// Stands in for `import.meta.url` in bundles that are loaded by `require`, where it does not exist.
export const bundleUrl = require('node:url').pathToFileURL(__filename).href;
