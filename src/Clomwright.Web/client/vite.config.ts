import { defineConfig } from 'vite';

export default defineConfig({
  base: '/app/',
  build: {
    outDir: '../wwwroot/app',
    emptyOutDir: true,
    target: 'es2022',
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    reportCompressedSize: false,
  },
});
