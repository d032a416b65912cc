import { defineConfig } from 'vite';

/** The page of a day is built as one program and one sheet of styles, which the server puts into one document. */
export default defineConfig({
  build: {
    outDir: '../wwwroot/app/today',
    emptyOutDir: true,
    target: 'es2022',
    reportCompressedSize: false,
    lib: { entry: 'src/today/main.ts', formats: ['iife'], name: 'clomToday', fileName: () => 'today.js', cssFileName: 'today' },
  },
});
