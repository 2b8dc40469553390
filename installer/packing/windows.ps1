# Pluckwright on Windows: build the folder, install it for this user, or remove it again.
#
#     powershell -ExecutionPolicy Bypass -File installer\packing\windows.ps1            builds dist\pluckwright and a zip
#     powershell -ExecutionPolicy Bypass -File installer\packing\windows.ps1 -Install   builds, then installs for this user
#     powershell -ExecutionPolicy Bypass -File installer\packing\windows.ps1 -Remove    removes the program; lessons stay
#
# NOT TRIED: written on Linux, where no Windows was to be had. What it relies on is in PACKAGES.md.

param([switch]$Install, [switch]$Remove)
$ErrorActionPreference = "Stop"

$base = Resolve-Path (Join-Path $PSScriptRoot "..\..")
$place = Join-Path $env:LOCALAPPDATA "Programs\Pluckwright"
$link = Join-Path $env:APPDATA "Microsoft\Windows\Start Menu\Programs\Pluckwright.lnk"
$classes = "HKCU:\Software\Classes"
$kinds = [xml](Get-Content -Raw -Encoding UTF8 (Join-Path $PSScriptRoot "pluckwright.xml"))
$endings = $kinds.GetElementsByTagName("glob") | ForEach-Object { $_.GetAttribute("pattern").TrimStart("*") }

if ($Remove) {
    # Lessons lie in %APPDATA%\pluckwright, which is left alone.
    Remove-Item -Recurse -Force $place, $link -ErrorAction SilentlyContinue
    Remove-Item -Recurse -Force "$classes\Pluckwright.File" -ErrorAction SilentlyContinue
    foreach ($ending in $endings) {
        Remove-ItemProperty -Path "$classes\$ending\OpenWithProgids" -Name "Pluckwright.File" -ErrorAction SilentlyContinue
    }
    exit 0
}

& py -3 (Join-Path $base "installer\package.py") folder
if ($LASTEXITCODE -ne 0) { exit $LASTEXITCODE }
$built = Join-Path $base "dist\pluckwright"
Compress-Archive -Force -Path $built -DestinationPath (Join-Path $base "dist\pluckwright-windows.zip")

if ($Install) {
    if (Test-Path $place) { Remove-Item -Recurse -Force $place }
    Copy-Item -Recurse $built $place
    $program = Join-Path $place "pluckwright.exe"
    $shortcut = (New-Object -ComObject WScript.Shell).CreateShortcut($link)
    $shortcut.TargetPath = $program
    $shortcut.Save()
    # Offered under "Open with"; what opens a file by default stays the user's choice.
    New-Item -Force -Path "$classes\Pluckwright.File\shell\open\command" -Value "`"$program`" `"%1`"" | Out-Null
    New-Item -Force -Path "$classes\Pluckwright.File\DefaultIcon" -Value "$program,0" | Out-Null
    foreach ($ending in $endings) {
        New-Item -Force -Path "$classes\$ending\OpenWithProgids" | Out-Null
        New-ItemProperty -Force -Path "$classes\$ending\OpenWithProgids" -Name "Pluckwright.File" -PropertyType String -Value "" | Out-Null
    }
}
