@echo off
rem Starts Gloam from the folder it stands in; the class-data archive only makes the start quicker.
setlocal
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
"%java%" -Xlog:disable -Xlog:all=error:stderr -Xshare:auto "-XX:SharedArchiveFile=%~dp0..\gloam.jsa" -XX:+IgnoreUnrecognizedVMOptions -XX:+UnlockDiagnosticVMOptions -XX:ArchiveRelocationMode=0 -XX:+UseG1GC -XX:TieredStopAtLevel=1 -XX:NewSize=160m -jar "%~dp0..\gloam.jar" %*
exit /b %errorlevel%
