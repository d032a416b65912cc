@echo off
rem Builds Clomwright, starts it and opens the workbench: run [a house file or a folder of houses, and options of clom open]
setlocal
for %%N in (dotnet node npm) do (
  where %%N >nul 2>nul || (echo run: "%%N" is not on this machine. Install the .NET 10 SDK and Node.js 20 or newer, then run this again. & exit /b 2)
)
echo Building (the first time takes a minute or two) ...
set "MAKE=dotnet publish "%~dp0src\Clomwright.Cli" --configuration Release -p:ForPeople=true --use-current-runtime --no-self-contained --output "%~dp0artifacts\clom" --verbosity quiet --nologo"
%MAKE% || (
  echo run: could not compile ahead of time; building what starts more slowly.
  %MAKE% -p:PublishReadyToRun=false || exit /b 1
)
if "%~1"=="" (
  "%~dp0artifacts\clom\clom.exe" open "%~dp0examples" --greet
) else (
  "%~dp0artifacts\clom\clom.exe" open %*
)
