@echo off
rem Starts Buzzout @project.version@ on Windows. It looks for its jar beside itself; put this folder on your PATH.
setlocal
set "JAR=%~dp0@project.build.finalName@.jar"
if not exist "%JAR%" (
    echo %JAR% is missing: keep it beside the launcher.>&2
    exit /b 70
)
set "JAVA=java.exe"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"
"%JAVA%" -version >nul 2>nul
if errorlevel 1 (
    echo Buzzout needs Java @maven.compiler.release@ or newer: install it, or set JAVA_HOME.>&2
    exit /b 70
)
rem The program writes UTF-8.
chcp 65001 >nul
"%JAVA%" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -XX:CICompilerCount=1 -XX:-UsePerfData -jar "%JAR%" %*
exit /b %errorlevel%
