// The folder rule: arrows go one way. Run by `npm run check`.
const only = (from, ...to) => ({
  name: `${from} imports only ${to.join(', ') || 'itself'}`,
  severity: 'error',
  from: { path: `^src/${from}/` },
  to: { path: '^(src|electron)/', pathNot: `^src/(${[from, ...to].join('|')})/` },
});

module.exports = {
  forbidden: [
    { name: 'no cycles', severity: 'error', from: {}, to: { circular: true } },
    only('model'),
    only('reference', 'model'),
    only('intake', 'model'),
    only('words', 'model', 'intake'),
    only('charts', 'words', 'model'),
    only('leave-behind', 'charts', 'words', 'model', 'reference'),
    only('store', 'model', 'intake'),
    only('desk', 'store', 'intake', 'model', 'words', 'reference', 'leave-behind'),
    only('host', 'desk', 'store', 'intake', 'model', 'words', 'reference', 'leave-behind'),
    {
      name: 'screens know the desk by its contract only',
      severity: 'error',
      from: { path: '^src/screens/' },
      to: { path: '^src/', pathNot: '^src/(screens|charts|words|model|reference|intake/intake\\.ts|desk/contract\\.ts)' },
    },
    {
      name: 'nothing imports the desktop shell',
      severity: 'error',
      from: { path: '^src/' },
      to: { path: '^electron/' },
    },
    {
      name: 'the model is pure: no Node, no React, no clock libraries with state',
      severity: 'error',
      from: { path: '^src/(model|intake|words)/' },
      to: { path: '(^node:|^fs$|^path$|node_modules/(react|recharts|better-sqlite3|electron)/)' },
    },
  ],
  options: {
    tsPreCompilationDeps: true,
    doNotFollow: { path: 'node_modules' },
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'node', 'default', 'types'] },
  },
};
