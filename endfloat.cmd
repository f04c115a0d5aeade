@echo off
rem Endfloat on Windows: serves the shelf, or runs the command that is given (see: endfloat --help).
rem NOT TRIED: this file was written without a Windows machine at hand. On Linux and macOS use ./endfloat.
rem What it says itself goes to standard error, as with ./endfloat; it ends with 2 where it cannot start.
setlocal
set "ROOT=%~dp0"
set "APP=%ROOT%server\app\target"

rem --- Java: that of JAVA_HOME where there is one, else that of the path; version 17 or later ---
set "JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"
"%JAVA%" -version >nul 2>&1
if errorlevel 1 (
  echo endfloat: no Java was found. Install a JDK, version 17 or later, or set JAVA_HOME to one. 1>&2
  exit /b 2
)
rem It answers as "openjdk 17.0.12 2024-07-16"; Java 8 does not know the question.
set "VERSION="
for /f "tokens=2" %%v in ('""%JAVA%" --version 2>nul"') do if not defined VERSION set "VERSION=%%v"
set "MAJOR=0"
for /f "tokens=1 delims=.-+" %%m in ("%VERSION%") do set "MAJOR=%%m"
if %MAJOR% LSS 17 (
  echo endfloat: this Java is too old. Install a JDK, version 17 or later, or set JAVA_HOME to one. 1>&2
  exit /b 2
)

rem --- Build: once, and again where the checkout was moved. Unlike ./endfloat it does not see that sources changed. ---
set "BUILT="
if exist "%APP%\endfloat.args" if exist "%APP%\endfloat.stamp" set /p BUILT=<"%APP%\endfloat.stamp"
if [%BUILT%]==["%ROOT%"] goto run

where mvn >nul 2>&1
if errorlevel 1 (
  echo endfloat: no Maven was found. Install Maven, version 3.8 or later, and start again. 1>&2
  exit /b 2
)
echo First start: fetching libraries and building Endfloat. This takes one to five minutes, once. 1>&2
echo After a change of the sources delete server\app\target\endfloat.stamp to build again. 1>&2
pushd "%ROOT%"
call mvn -B -ntp -q -DskipTests -pl server/app -am package 1>&2
if errorlevel 1 (
  popd
  echo endfloat: the build failed; its output stands above. 1>&2
  exit /b 2
)
popd

rem One run over everything that a start needs writes the class-data archive; without it starts are only slower.
echo   preparing quick starts ... 1>&2
if exist "%APP%\endfloat.jsa" del "%APP%\endfloat.jsa"
findstr /v "SharedArchiveFile" "%APP%\endfloat.args" >"%APP%\endfloat.prepare.args"
"%JAVA%" "-XX:ArchiveClassesAtExit=%APP%\endfloat.jsa.new" "@%APP%\endfloat.prepare.args" endfloat.cli.Endfloat prepare <nul >nul 2>&1
if not errorlevel 1 if exist "%APP%\endfloat.jsa.new" move /y "%APP%\endfloat.jsa.new" "%APP%\endfloat.jsa" >nul
>"%APP%\endfloat.stamp" echo "%ROOT%"

:run
"%JAVA%" "@%APP%\endfloat.args" endfloat.cli.Endfloat %*
exit /b %errorlevel%
