@echo off
rem Runs every test: test          reduced counts of the random tests
rem                  test --long   the counts that the documents state
setlocal
for %%N in (dotnet node npm) do (
  where %%N >nul 2>nul || (echo test: "%%N" is not on this machine. Install the .NET 10 SDK and Node.js 20 or newer, then run this again. & exit /b 2)
)
if "%~1"=="--long" (
  set CLOM_TEST_LONG=1
  shift
)
if "%CLOM_TEST_SEED%"=="" set CLOM_TEST_SEED=20270601
echo Random tests start from seed %CLOM_TEST_SEED% (set CLOM_TEST_SEED to repeat a run).
echo The browser tests need Chromium: set CLOM_CHROMIUM to its path, or they are skipped and say so.
cd /d "%~dp0"
dotnet build Clomwright.slnx --verbosity quiet --nologo || exit /b 1
dotnet test --solution Clomwright.slnx --no-build --no-ansi --no-progress
