@echo off
rem Fills the workbooks that are dropped on it, with the Java of this system; without one it opens the window.
where java >nul 2>nul
if errorlevel 1 (
    echo Shaftwright needs Java 17 or newer; this system has none.
    pause
    exit /b 5
)
if "%~1"=="" (
    start "" javaw -jar "%~dp0shaftwright.jar"
    exit /b 0
)
:next
if "%~1"=="" goto done
java -jar "%~dp0shaftwright.jar" fill "%~1"
shift
goto next
:done
pause
