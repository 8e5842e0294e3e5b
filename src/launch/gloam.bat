@echo off
rem Starts Gloam from the folder it stands in; the class-data archive only makes the start quicker.
setlocal
set "java=java.exe"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java.exe"
if defined JAVA_HOME if not exist "%java%" goto missing
if not defined JAVA_HOME where "%java%" >nul 2>nul || goto missing
rem text is UTF-8; the console gets its own code page back
for /f "tokens=2 delims=:." %%p in ('chcp') do set "page=%%p"
chcp 65001 >nul
"%java%" -Xlog:disable -Xshare:auto "-XX:SharedArchiveFile=%~dp0..\gloam.jsa" -XX:+IgnoreUnrecognizedVMOptions -XX:+UnlockDiagnosticVMOptions -XX:ArchiveRelocationMode=0 -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xmn64m -jar "%~dp0..\gloam.jar" %*
set "code=%errorlevel%"
if defined page chcp %page% >nul
exit /b %code%
:missing
echo no Java at "%java%"; install Java 17 or newer, or set JAVA_HOME to the folder it stands in 1>&2
exit /b 5
