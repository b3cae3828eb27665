/** Windows as .msi, by wixl: for a firm whose administrator installs it for everybody on a computer. */
import { createHash } from 'node:crypto';
import { mkdirSync, writeFileSync } from 'node:fs';
import { basename, dirname, join, relative } from 'node:path';
import { ABOUT, root, steadyId } from './about.ts';
import { filesBelow } from './folder.ts';
import { icoFile } from './icon-files.ts';
import { run } from './run.ts';

const escaped = (text: string) => text.replaceAll('&', '&amp;').replaceAll('"', '&quot;').replaceAll('<', '&lt;');
/** An identifier of the installer's own tables: letters, digits, at most 72. */
const key = (kind: string, path: string) => `${kind}${createHash('sha256').update(path).digest('hex').slice(0, 24)}`;

/** One component a file, each with an identifier that hangs on its path only. */
function directoryXml(names: readonly string[], at: string): string {
  const here = names.filter((name) => (dirname(name) === '.' ? '' : dirname(name)) === at);
  const prefix = at === '' ? '' : `${at}/`;
  const below = new Set(
    names
      .filter((name) => name.startsWith(prefix) && name.slice(prefix.length).includes('/'))
      .map((name) => `${prefix}${name.slice(prefix.length).split('/')[0]}`),
  );
  return [
    ...here.map(
      (name) =>
        `<Component Id="${key('C', name)}" Guid="${steadyId(`msi/${name}`)}" Win64="yes"><File Id="${key('F', name)}" Name="${escaped(basename(name))}" Source="${escaped(name)}" KeyPath="yes"/></Component>`,
    ),
    ...[...below].map(
      (path) =>
        `<Directory Id="${key('D', path)}" Name="${escaped(basename(path))}">${directoryXml(names, path)}</Directory>`,
    ),
  ].join('\n');
}

export function makeMsi(folder: string, out: string, version: string = ABOUT.version): void {
  const work = join(root, 'packages/work/msi');
  mkdirSync(work, { recursive: true });
  writeFileSync(join(work, 'plainwarmth.ico'), icoFile());
  const names = filesBelow(folder);
  const xml = `<?xml version="1.0" encoding="utf-8"?>
<Wix xmlns="http://schemas.microsoft.com/wix/2006/wi">
<Product Id="${steadyId(`msi-product/${version}`)}" Name="${escaped(ABOUT.name)}" Version="${version}" Language="1033"
  Manufacturer="${escaped(ABOUT.publisher)}" UpgradeCode="${steadyId('msi-upgrade')}">
<Package InstallerVersion="500" Compressed="yes" InstallScope="perMachine" Description="${escaped(ABOUT.summary)}"/>
<MajorUpgrade DowngradeErrorMessage="A newer ${ABOUT.name} is installed already."/>
<Media Id="1" Cabinet="plainwarmth.cab" EmbedCab="yes"/>
<Icon Id="plainwarmth.ico" SourceFile="${escaped(relative(folder, join(work, 'plainwarmth.ico')))}"/>
<Property Id="ARPPRODUCTICON" Value="plainwarmth.ico"/>
<Property Id="ARPCOMMENTS" Value="Removing it leaves what was kept, in the folder Plainwarmth of each person's application data."/>
<Directory Id="TARGETDIR" Name="SourceDir">
<Directory Id="ProgramFiles64Folder"><Directory Id="INSTALLDIR" Name="${ABOUT.name}">
${directoryXml(names, '')}
</Directory></Directory>
<Directory Id="ProgramMenuFolder">
<Component Id="Menu" Guid="${steadyId('msi/menu')}" Win64="yes">
<Shortcut Id="MenuStart" Name="${ABOUT.name}" Target="[INSTALLDIR]Plainwarmth.exe" WorkingDirectory="INSTALLDIR" Icon="plainwarmth.ico"/>
<RegistryValue Root="HKLM" Key="Software\\${ABOUT.name}" Name="menu" Type="integer" Value="1" KeyPath="yes"/>
</Component>
</Directory>
<Directory Id="DesktopFolder" Name="Desktop">
<Component Id="OnDesktop" Guid="${steadyId('msi/desktop')}" Win64="yes">
<Shortcut Id="DesktopStart" Name="${ABOUT.name}" Target="[INSTALLDIR]Plainwarmth.exe" WorkingDirectory="INSTALLDIR" Icon="plainwarmth.ico"/>
<RegistryValue Root="HKLM" Key="Software\\${ABOUT.name}" Name="desktop" Type="integer" Value="1" KeyPath="yes"/>
</Component>
</Directory>
</Directory>
<Feature Id="All" Title="${ABOUT.name}" Level="1">
${names.map((name) => `<ComponentRef Id="${key('C', name)}"/>`).join('\n')}
<ComponentRef Id="Menu"/>
<ComponentRef Id="OnDesktop"/>
</Feature>
</Product>
</Wix>
`;
  const source = join(work, 'plainwarmth.wxs');
  writeFileSync(source, xml);
  // It knows no absolute names of sources.
  run('wixl', ['-a', 'x64', '-o', out, source], folder);
}
