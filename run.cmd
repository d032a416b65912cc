@echo off
rem Builds Clomwright, starts it and opens the workbench: run [a house file or a folder of houses]
setlocal
for %%N in (dotnet node npm) do (
  where %%N >nul 2>nul || (echo run: "%%N" is not on this machine. Install the .NET 10 SDK and Node.js 20 or newer, then run this again. & exit /b 2)
)
echo Building (the first time takes a minute or two) ...
dotnet build "%~dp0src\Clomwright.Cli" --configuration Release --verbosity quiet --nologo || exit /b 1
set "HOUSES=%~1"
if "%HOUSES%"=="" set "HOUSES=%~dp0examples"
dotnet "%~dp0artifacts\bin\Clomwright.Cli\release\clom.dll" open "%HOUSES%"
