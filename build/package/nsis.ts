/**
 * Windows by NSIS: a small starter without a console window, and an installer for one person that needs no
 * administrator. The Node beside it stays byte for byte as its makers signed it.
 */
import { mkdirSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { ABOUT, type About, PACKED_AT, root } from './about.ts';
import { icoFile } from './icon-files.ts';
import { run } from './run.ts';

const work = join(root, 'packages/work/nsis');
/** NSIS reads a $ and a quotation mark as its own signs. */
const quoted = (text: string) => `"${text.replaceAll('$', '$$').replaceAll('"', '$\\"')}"`;

/** What Windows shows of a program's file. */
const versionOf = ({ name, version, publisher, summary }: About, file: string): string[] => [
  `VIProductVersion ${version}.0`,
  ...Object.entries({
    ProductName: name,
    ProductVersion: version,
    FileVersion: version,
    FileDescription: summary,
    CompanyName: publisher,
    LegalCopyright: 'MIT licence',
    OriginalFilename: file,
  }).map(([key, value]) => `VIAddVersionKey /LANG=0 ${key} ${quoted(value)}`),
];

/** The 32-bit stub would need 32-bit Windows parts; every supported Windows runs the 64-bit one. */
const head = (about: About, out: string, file: string): string[] => [
  'Target amd64-unicode',
  `Name ${quoted(about.name)}`,
  `OutFile ${quoted(out)}`,
  'RequestExecutionLevel user',
  'ManifestDPIAware true',
  `Icon ${quoted(join(work, 'plainwarmth.ico'))}`,
  ...versionOf(about, file),
];

function compile(name: string, lines: readonly string[]): void {
  const script = join(work, `${name}.nsi`);
  writeFileSync(script, `${lines.join('\n')}\n`);
  run('makensis', ['-V2', '-WX', '-INPUTCHARSET', 'UTF8', script]);
}

const SAYS = {
  missing: [
    'Plainwarmth could not be started: a part of it is missing. Install it again; what you kept is safe.',
    'Plainwarmth ließ sich nicht starten: Ein Teil fehlt. Installieren Sie es neu; was gespeichert ist, ist sicher.',
  ],
  gone: [
    'Plainwarmth has gone. What you kept was left where it is:$\\r$\\n$APPDATA\\Plainwarmth$\\r$\\nDelete that folder if it is to go too.',
    'Plainwarmth ist entfernt. Was Sie gespeichert haben, blieb, wo es ist:$\\r$\\n$APPDATA\\Plainwarmth$\\r$\\nLöschen Sie diesen Ordner, wenn auch das weg soll.',
  ],
  open: [
    'Plainwarmth is still at work. Close its windows and try again.',
    'Plainwarmth arbeitet noch. Schließen Sie seine Fenster und versuchen Sie es noch einmal.',
  ],
} as const;

/** The language is that of the person's Windows. */
const LANGUAGES = [
  `LoadLanguageFile "\${NSISDIR}/Contrib/Language files/English.nlf"`,
  `LoadLanguageFile "\${NSISDIR}/Contrib/Language files/German.nlf"`,
  ...Object.entries(SAYS).flatMap(([name, [english, german]]) => [
    `LangString ${name} 1033 "${english}"`,
    `LangString ${name} 1031 "${german}"`,
  ]),
];

/** Writes Plainwarmth.exe, which starts the program beside it with a hidden console, and answers its path. */
export function makeStarter(): string {
  mkdirSync(work, { recursive: true });
  writeFileSync(join(work, 'plainwarmth.ico'), icoFile());
  const out = join(work, 'Plainwarmth.exe');
  compile('starter', [
    ...head(ABOUT, out, 'Plainwarmth.exe'),
    'SetCompressor zlib',
    'SilentInstall silent',
    '!include FileFunc.nsh',
    ...LANGUAGES,
    'Section',
    `  \${GetParameters} $0`,
    '  ClearErrors',
    '  ExecShell "open" "$EXEDIR\\runtime\\node.exe" \'"$EXEDIR\\program\\node\\plainwarmth.js" $0\' SW_HIDE',
    '  IfErrors 0 +2',
    '  MessageBox MB_OK|MB_ICONSTOP "$(missing)" /SD IDOK',
    'SectionEnd',
  ]);
  return out;
}

const UNINSTALL_KEY = `"Software\\Microsoft\\Windows\\CurrentVersion\\Uninstall\\${ABOUT.name}"`;
const entry = (name: string, value: string) => `  WriteRegStr HKCU ${UNINSTALL_KEY} ${name} ${value}`;

/** Ends a running copy once its work is done, then takes its files away; one that does not end stops the whole. */
const CLEAR_AWAY = [
  '  IfFileExists "$INSTDIR\\runtime\\node.exe" 0 clear',
  '  nsExec::Exec \'"$INSTDIR\\runtime\\node.exe" "$INSTDIR\\program\\node\\plainwarmth.js" quit\'',
  '  Pop $0',
  '  StrCpy $1 0',
  '  again:',
  '  ClearErrors',
  '  Delete "$INSTDIR\\runtime\\node.exe"',
  '  IfErrors 0 clear',
  '  IntOp $1 $1 + 1',
  '  Sleep 500',
  '  IntCmp $1 20 0 again 0',
  '  MessageBox MB_RETRYCANCEL|MB_ICONEXCLAMATION "$(open)" /SD IDCANCEL IDRETRY again',
  '  SetErrorLevel 3',
  '  Quit',
  '  clear:',
  ...['runtime', 'program', 'licences', 'bin'].map((folder) => `  RMDir /r "$INSTDIR\\${folder}"`),
];

/** Solid LZMA makes it a third smaller than zlib and takes ten times as long. */
export function makeInstaller(folder: string, about: About, out: string, packing: 'lzma' | 'zlib' = 'lzma'): void {
  // The time of the icon's own file would not matter, but that of the folder's files does: they were settled before.
  utimesSync(join(work, 'plainwarmth.ico'), PACKED_AT, PACKED_AT);
  compile('installer', [
    ...head(about, out, `${about.name}.exe`),
    `UninstallIcon ${quoted(join(work, 'plainwarmth.ico'))}`,
    ...(packing === 'lzma' ? ['SetCompressor /SOLID lzma', 'SetCompressorDictSize 64'] : ['SetCompressor zlib']),
    `InstallDir "$LOCALAPPDATA\\Programs\\${about.name}"`,
    'AutoCloseWindow true',
    'ShowInstDetails nevershow',
    'Page instfiles',
    'UninstPage uninstConfirm',
    'UninstPage instfiles',
    ...LANGUAGES,
    'Function .onInstSuccess',
    '  IfSilent +2',
    '  Exec \'"$INSTDIR\\Plainwarmth.exe"\'',
    'FunctionEnd',
    'Section',
    ...CLEAR_AWAY,
    '  SetOutPath "$INSTDIR"',
    `  File /r ${quoted(`${folder}/*.*`)}`,
    `  WriteUninstaller "$INSTDIR\\uninstall.exe"`,
    '  CreateDirectory "$SMPROGRAMS\\Plainwarmth"',
    '  CreateShortcut "$SMPROGRAMS\\Plainwarmth\\Plainwarmth.lnk" "$INSTDIR\\Plainwarmth.exe"',
    '  CreateShortcut "$SMPROGRAMS\\Plainwarmth\\Quit Plainwarmth.lnk" "$INSTDIR\\Plainwarmth.exe" "quit"',
    '  CreateShortcut "$SMPROGRAMS\\Plainwarmth\\Plainwarmth command line.lnk" "$SYSDIR\\cmd.exe" \'/k "$INSTDIR\\bin\\command-line.cmd"\'',
    '  CreateShortcut "$DESKTOP\\Plainwarmth.lnk" "$INSTDIR\\Plainwarmth.exe"',
    entry('DisplayName', quoted(about.name)),
    entry('DisplayVersion', quoted(about.version)),
    entry('Publisher', quoted(about.publisher)),
    entry('DisplayIcon', '"$INSTDIR\\Plainwarmth.exe"'),
    entry('InstallLocation', '"$INSTDIR"'),
    entry('UninstallString', '\'"$INSTDIR\\uninstall.exe"\''),
    entry('QuietUninstallString', '\'"$INSTDIR\\uninstall.exe" /S\''),
    `  WriteRegDWORD HKCU ${UNINSTALL_KEY} NoModify 1`,
    `  WriteRegDWORD HKCU ${UNINSTALL_KEY} NoRepair 1`,
    'SectionEnd',
    'Section Uninstall',
    ...CLEAR_AWAY,
    '  Delete "$INSTDIR\\Plainwarmth.exe"',
    '  Delete "$INSTDIR\\LICENSE.txt"',
    '  Delete "$INSTDIR\\Read me first.txt"',
    '  Delete "$INSTDIR\\uninstall.exe"',
    '  RMDir "$INSTDIR"',
    '  RMDir /r "$SMPROGRAMS\\Plainwarmth"',
    '  Delete "$DESKTOP\\Plainwarmth.lnk"',
    // The window's browser keeps its own cache there, and nothing that was saved.
    '  RMDir /r "$LOCALAPPDATA\\Plainwarmth"',
    `  DeleteRegKey HKCU ${UNINSTALL_KEY}`,
    '  MessageBox MB_OK|MB_ICONINFORMATION "$(gone)" /SD IDOK',
    'SectionEnd',
  ]);
}
