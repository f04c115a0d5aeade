@echo off
rem Endfloat on Windows: serves the shelf, or runs the command that is given (see: endfloat --help).
rem NOT TRIED: this file was written without a Windows machine at hand. On Linux and macOS use ./endfloat.
setlocal
set "ROOT=%~dp0"
set "APP=%ROOT%server\app\target"
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"

"%JAVA%" -version >nul 2>&1
if errorlevel 1 (
  echo endfloat: no Java was found. Install a JDK, version 17 or later, or set JAVA_HOME to one. 1>&2
  exit /b 2
)
if not exist "%APP%\endfloat.stamp" (
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
  echo built> "%APP%\endfloat.stamp"
)
"%JAVA%" "@%APP%\endfloat.args" endfloat.cli.Endfloat %*
exit /b %errorlevel%
