// The order of knowledge, kept by reading the imports: a room may import only what stands before it here.
const rooms = [
  'quantity',
  'reference',
  'properties',
  'circuit',
  'plan',
  'steps',
  'walk',
  'takeoff',
  'checks',
  ['procedure', 'compare'],
];

const engine = 'server/engine';
const folders = (list) => list.flat().join('|');

/** A room must not know the rooms after it. */
const order = rooms.flatMap((room, place) => {
  const later = rooms.slice(place + 1);
  if (later.length === 0) return [];
  const name = [room].flat().join('-');
  return [
    {
      name: `order-${name}`,
      comment: `${name} stands before ${folders(later).replaceAll('|', ', ')} in the order of knowledge.`,
      severity: 'error',
      from: { path: `^${engine}/(${folders([room])})/` },
      to: { path: `^${engine}/(${folders(later)})/` },
    },
  ];
});

/** @type {import('dependency-cruiser').IConfiguration} */
module.exports = {
  forbidden: [
    ...order,
    {
      name: 'twins-apart',
      comment: 'The printed procedure and the comparison stand side by side.',
      severity: 'error',
      from: { path: `^${engine}/procedure/` },
      to: { path: `^${engine}/compare/` },
    },
    {
      name: 'rooms-below-the-snapshot',
      comment: 'Files directly in the engine put the rooms together; only the finding and the view, contracts, are known to the rooms.',
      severity: 'error',
      from: { path: `^${engine}/(${folders(rooms)})/` },
      to: { path: `^${engine}/[^/]+$`, pathNot: `^${engine}/(finding|view)\\.ts$` },
    },
    {
      name: 'grammar-alone',
      comment: 'The grammar knows no refrigeration: chevrotain and itself only.',
      severity: 'error',
      from: { path: '^grammar/' },
      to: { pathNot: ['^grammar/', '^node_modules/(@chevrotain|chevrotain)'] },
    },
    {
      name: 'engine-pure',
      comment: 'The engine runs unchanged in Node, in a web worker and in a test: grammar, itself and zod only.',
      severity: 'error',
      from: { path: `^${engine}/` },
      to: { pathNot: ['^grammar/', `^${engine}/`, '^node_modules/zod/'] },
    },
    {
      name: 'editor-by-itself',
      comment: 'The editor server knows neither the command line nor the client.',
      severity: 'error',
      from: { path: '^server/editor/' },
      to: { path: '^(server/command|client)/' },
    },
    {
      name: 'command-by-itself',
      comment: 'The command line knows neither the editor server nor the client.',
      severity: 'error',
      from: { path: '^server/command/' },
      to: { path: '^(server/editor|client)/' },
    },
    {
      name: 'client-by-protocol',
      comment: 'The client speaks to the server; it shares with it the names of the requests and nothing else.',
      severity: 'error',
      from: { path: '^client/' },
      to: { path: '^(server|grammar)/', pathNot: '^server/editor/protocol\\.ts$' },
    },
    {
      name: 'protocol-types-at-the-edge',
      comment: 'Types of the language-server protocol and of VS Code stay in the editor server and in the client.',
      severity: 'error',
      from: { pathNot: '^(server/editor|client|tests|node_modules)/' },
      to: { path: '(^node_modules/vscode-|^vscode$)' },
    },
    {
      name: 'disk-at-the-door',
      comment: 'In the editor server only the Node entry and its file door touch the machine, so that it also runs in a worker.',
      severity: 'error',
      from: { path: '^server/editor/', pathNot: '^server/editor/(main-node|door-disk)\\.ts$' },
      to: { dependencyTypes: ['core'] },
    },
    { name: 'no-circles', severity: 'error', from: {}, to: { circular: true } },
    {
      name: 'found',
      comment: 'Every import leads to a file.',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true, pathNot: '^vscode$' },
    },
    {
      name: 'no-tests-in-the-product',
      severity: 'error',
      from: { path: '^(grammar|server|client)/' },
      to: { path: '^(tests|bench|scripts|examples)/' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '^(dist|out)/' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: { extensions: ['.ts', '.mjs', '.js', '.json'], mainFields: ['module', 'main', 'types'], exportsFields: ['exports'], conditionNames: ['import', 'require', 'node', 'default', 'types'] },
  },
};
