@echo off
rem Starts Boreledger from the folder it stands in; the folder can be copied anywhere.
setlocal
set "HOME_DIR=%~dp0.."
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
"%JAVA%" -Dboreledger.home="%HOME_DIR%" -DjSerialComm.library.path="%HOME_DIR%\native\serial" -Dorg.sqlite.lib.path="%HOME_DIR%\native\sqlite" -XX:+UseSerialGC %BORELEDGER_JAVA_OPTIONS% --module-path "%HOME_DIR%\lib" --module boreledger.station/boreledger.station.cli.Main %*
exit /b %ERRORLEVEL%
