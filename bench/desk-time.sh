#!/usr/bin/env bash
# Times at the desk with one person and with twenty on this machine, and the list of fifty designs.
set -euo pipefail
cd "$(dirname "$0")/.."
dotnet run -c Release --project bench/Desk -- "${1:-20}"
