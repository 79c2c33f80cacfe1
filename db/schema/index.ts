export * from './delivery.ts';
export * from './marks.ts';
export * from './people.ts';
export * from './practice.ts';
