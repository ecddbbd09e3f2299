@echo off
rem Runs Twinbar on Windows, and builds it first where there is no build. Unlike the shell script
rem "twinbar" it does not notice changed sources: delete the folder .build\windows to build anew.
setlocal
set "root=%~dp0"
set "build=%root%.build\windows"
set "log=%root%.build\build.log"
set "need=Twinbar needs a JDK, version 17 or newer: install one or set JAVA_HOME to it"

set "java=java.exe"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java.exe"
"%java%" --list-modules >"%TEMP%\twinbar-modules.txt" 2>nul
if errorlevel 1 (
    echo %need%; %java% is none. 1>&2
    exit /b 2
)
rem A line reads java.base@17.0.15, which splits into java, base and 17.
set "major=0"
for /f "tokens=3 delims=@." %%v in ('findstr /b /c:"java.base@" "%TEMP%\twinbar-modules.txt"') do (
    set "major=%%v"
)
if %major% lss 17 (
    echo %need%; %java% is version %major%. 1>&2
    exit /b 2
)

if exist "%build%\twinbar.jar" goto run
echo Building Twinbar (the first time takes a minute)... 1>&2
if not exist "%build%" mkdir "%build%"
call "%root%mvnw.cmd" -f "%root%pom.xml" -B -ntp -Pprogram -pl app -am package >"%log%" 2>&1 <nul
if errorlevel 1 (
    echo Twinbar could not be built; %log% holds the whole story. 1>&2
    exit /b 1
)
copy /y "%root%app\target\twinbar.jar" "%build%" >nul

:run
"%java%" -Xshare:auto -Djava.awt.headless=true --enable-native-access=ALL-UNNAMED ^
    -cp "%build%\twinbar.jar" org.twinbar.app.Main %*
exit /b %errorlevel%
