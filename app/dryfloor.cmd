@echo off
rem Starts Dryfloor: finds a JDK, builds the program if need be, and runs it.
setlocal EnableExtensions DisableDelayedExpansion
set "APP=%~dp0"
set "JAVA="
call :try "%JAVA_HOME%"
for /f "delims=" %%J in ('where java 2^>nul') do call :try "%%~dpJ.."
for /d %%D in ("%ProgramFiles%\Eclipse Adoptium\jdk-*" "%ProgramFiles%\Java\jdk-*" "%ProgramFiles%\Microsoft\jdk-*" "%USERPROFILE%\.jdks\*") do call :try "%%~D"
if not defined JAVA (
  echo dryfloor: no Java 25 or newer was found. Install a JDK 25, for example Temurin 25, 1>&2
  echo and set JAVA_HOME to its folder if it is not found by itself. 1>&2
  exit /b 3
)
set "MEMORY=%DRYFLOOR_MEMORY%"
if not defined MEMORY set "MEMORY=256m"
set "JAR=%APP%target\dryfloor-app.jar"
set "STALE="
if not exist "%JAR%" set "STALE=1"
if not defined STALE if exist "%APP%..\pom.xml" powershell -NoProfile -Command "$j=(Get-Item -LiteralPath $env:JAR).LastWriteTime; foreach($m in 'model','analysis','app'){ foreach($p in 'pom.xml','src\main'){ $t=Join-Path ($env:APP+'..') (Join-Path $m $p); if((Test-Path -LiteralPath $t) -and (Get-ChildItem -LiteralPath $t -Recurse -File | Where-Object { $_.LastWriteTime -gt $j })){ exit 1 } } }; exit 0" || set "STALE=1"
if defined STALE (
  where mvn >nul 2>nul || (
    echo dryfloor: the program is not built yet and Maven ^(mvn^) was not found to build it. 1>&2
    exit /b 3
  )
  echo dryfloor: building the program, as before its first run and after changes. This takes about 1>&2
  echo a minute; the very first time several, because Maven fetches the libraries. 1>&2
  pushd "%APP%.."
  call mvn -q -B -Dmaven.test.skip=true -Dspotless.check.skip=true -Dstyle.color=never package 1>&2 || (popd & echo dryfloor: the build failed. 1>&2 & exit /b 3)
  popd
)
"%JAVA%" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xshare:auto -Xlog:disable -Xlog:all=off -XX:+AutoCreateSharedArchive "-XX:SharedArchiveFile=%APP%target\dryfloor.jsa" "-Xmx%MEMORY%" -Dfile.encoding=UTF-8 -Djava.awt.headless=true --enable-native-access=ALL-UNNAMED -jar "%JAR%" %*
exit /b %ERRORLEVEL%

:try
if defined JAVA exit /b 0
if not exist "%~1\bin\java.exe" exit /b 0
set "FOUND="
for /f "tokens=2 delims==." %%V in ('findstr /b "JAVA_VERSION=" "%~1\release" 2^>nul') do set "FOUND=%%~V"
if not defined FOUND exit /b 0
set "FOUND=%FOUND:"=%"
if %FOUND% GEQ 25 set "JAVA=%~1\bin\java.exe"
exit /b 0
