@echo off
title Slips When Hot
powershell -NoProfile -ExecutionPolicy Bypass -File "%~dp0server\serve.ps1"
pause
