@echo off
rem Starts Everyblade from wherever its folder stands.
setlocal
set "HOME_FOLDER=%~dp0.."
set "JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"
rem Whether it is a terminal that would show how far something is, only Java can tell here; newer ones need jdk.console for it.
"%JAVA%" -Xshare:auto -XX:TieredStopAtLevel=1 -XX:+UseG1GC -XX:+IgnoreUnrecognizedVMOptions -XX:CICompilerCount=1 -XX:-UsePerfData -Dsun.reflect.inflationThreshold=2000 -Dfile.encoding=UTF-8 -Deveryblade.watched=console -Djdk.console=java.base "-Deveryblade.home=%HOME_FOLDER%" -jar "%HOME_FOLDER%\lib\everyblade-desktop.jar" %*
exit /b %ERRORLEVEL%
