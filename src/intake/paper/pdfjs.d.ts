/** The half that takes a PDF apart; it comes without types, and puts itself where the other half looks for it. */
declare module 'pdfjs-dist/legacy/build/pdf.worker.mjs';
