#!/usr/bin/env bash
# Checks a whole catalogue of parts, on one machine or many, and can be stopped and started again at any time.
#
#   catalogue.sh PARTS CATALOGUE [OPTION…]     lists the parts, then checks what is not checked yet; options are GNU
#                                              parallel's, such as --sshlogin one,two or --jobs 4
#   catalogue.sh --list PARTS CATALOGUE        only lists the parts, and prints the number of shares
#   catalogue.sh --share NUMBER CATALOGUE      only checks one share: for a batch scheduler
#
# CATALOGUE/parts.txt names the parts in the order in which they came; parts that changed since are named again.
# CATALOGUE/NUMBER.jsonl holds one line of JSON for each of a share's parts. Other machines must see the same folders.
set -euo pipefail
shopt -s inherit_errexit

# Parts of a share: enough that starting the program does not count, few enough that little is lost with a share.
parts_a_share=100
here=$(dirname "$(realpath "$0")")
bellhand=("${NODE:-node}" "$here/../../../dist/bellhand.js")

fail() {
  echo "catalogue: $*" >&2
  exit 2
}

# Appends new and changed parts to the list; prints the number of shares.
list() {
  local parts catalogue stamp
  [ -d "$1" ] || fail "$1: there is no such folder of parts: check the name"
  parts=$(realpath -e "$1")
  mkdir -p "$2"
  catalogue=$(realpath -e "$2")
  stamp=$(mktemp "$catalogue/parts.XXXXXX")
  find "$parts" -type f ! -name $'*\n*' \( -iname '*.mxl' -o -iname '*.musicxml' -o -iname '*.xml' \) | LC_ALL=C sort >"$stamp"
  if [ -e "$catalogue/parts.txt" ]; then
    {
      LC_ALL=C sort -u "$catalogue/parts.txt" | LC_ALL=C comm -13 - "$stamp"
      find "$parts" -type f -newer "$catalogue/parts.txt" | LC_ALL=C sort | LC_ALL=C comm -12 - "$stamp"
    } | LC_ALL=C sort -u >"$stamp.new"
    if [ -s "$stamp.new" ]; then
      cat "$catalogue/parts.txt" "$stamp.new" >"$stamp.all"
      touch -r "$stamp" "$stamp.all"
      mv "$stamp.all" "$catalogue/parts.txt"
    fi
    rm "$stamp" "$stamp.new"
  else
    mv "$stamp" "$catalogue/parts.txt"
  fi
  echo $((($(wc -l <"$catalogue/parts.txt") + parts_a_share - 1) / parts_a_share))
}

# Checks a share. It is done when it has a line for each of its parts, and only a whole one takes its name.
share() {
  local number=$1 catalogue=$2 last whole unfinished
  [ -e "$catalogue/parts.txt" ] || fail "$catalogue: no parts are listed here: run catalogue.sh --list first"
  last=$((number * parts_a_share))
  names() { sed -n "$((last - parts_a_share + 1)),${last}p" "$catalogue/parts.txt"; }
  whole=$catalogue/$number.jsonl
  if [ -e "$whole" ] && [ "$(wc -l <"$whole")" -eq "$(names | wc -l)" ]; then return; fi
  unfinished=$(mktemp "$whole.XXXXXX")
  # Ends with another code than 0 for impossible notes and unreadable files: each has its line, so that is no failure.
  names | xargs -d '\n' "${bellhand[@]}" check --format json-lines --jobs 1 >"$unfinished" 2>/dev/null || true
  if [ "$(wc -l <"$unfinished")" -ne "$(names | wc -l)" ]; then
    rm "$unfinished"
    echo "catalogue: share $number could not be checked to its end: start again" >&2
    return 1
  fi
  chmod 644 "$unfinished"
  mv "$unfinished" "$whole"
}

case ${1:-} in
  --list) list "$2" "$3" ;;
  --share) share "$2" "$3" ;;
  '' | -*) sed -n '2,11s/^# \{0,1\}//p' "$0" >&2; exit 2 ;;
  *)
    command -v parallel >/dev/null || fail 'GNU parallel is not installed: install the package "parallel"'
    shares=$(list "$1" "$2")
    catalogue=$(realpath -e "$2")
    seq "$shares" | parallel "${@:3}" --joblog "$catalogue/parallel.log" -q bash "$here/catalogue.sh" --share {} "$catalogue"
    ;;
esac
