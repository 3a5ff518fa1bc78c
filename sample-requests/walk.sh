#!/usr/bin/env bash
# The whole walk against a running service: an airframe, a joint, its estimate, test after test, a flight charge.
#   sample-requests/walk.sh [http://127.0.0.1:8080]
# The outcome of each test comes from a stand-in for the field: this joint parts partially from 0.72 g and fully from 0.84 g.
set -euo pipefail
base=${1:-http://127.0.0.1:8080}
run=$(date +%s)-$$
answer=$(mktemp); headers=$(mktemp)
trap 'rm -f "$answer" "$headers"' EXIT

call() { # call METHOD PATH [BODY] [HEADER]: prints the request and the answer; fails on any status but 2xx
  local method=$1 path=$2 body=${3:-} header=${4:-Accept: application/json} status
  printf '\n>> %s %s\n' "$method" "$path"
  if [ -n "$body" ]; then
    printf '%s\n' "$body"
    status=$(curl -sS -o "$answer" -D "$headers" -w '%{http_code}' -X "$method" "$base$path" \
      -H 'Content-Type: application/json' -H "$header" --data-binary "$body")
  else
    status=$(curl -sS -o "$answer" -D "$headers" -w '%{http_code}' -X "$method" "$base$path" -H "$header")
  fi
  printf '<< %s\n' "$status"
  cat "$answer"; echo
  case $status in 2??) ;; *) echo "walk: $method $path gave $status" >&2; exit 1;; esac
}
id() { grep -i '^location:' "$headers" | tr -d '\r' | sed 's#.*/##'; }
word() { grep -o "\"$1\":\"[^\"]*\"" "$answer" | head -1 | cut -d'"' -f4; }
grams() { grep -o "\"$1\":{\"value\":[0-9.]*" "$answer" | head -1 | sed 's/.*://'; }

call POST /api/airframes '{"name":"Bittern","units":"metric","outerDiameter":{"value":98,"unit":"mm"}}' "Idempotency-Key: walk-$run-airframe"
airframe=$(id)

call POST "/api/airframes/$airframe/joints" '{"name":"nose to bay","event":"main","setup":{
  "innerDiameter":{"value":92,"unit":"mm"},
  "cavity":[{"kind":"nose","profile":{"shape":"tangent-ogive"},"baseDiameter":{"value":92,"unit":"mm"},
             "length":{"value":620,"unit":"mm"},"tipCutoff":{"value":40,"unit":"mm"}}],
  "contents":[{"name":"bay pushed in","kind":"intrusion","depth":{"value":45,"unit":"mm"},"diameter":{"value":92,"unit":"mm"}},
              {"name":"main parachute","kind":"fabric","material":"nylon","mass":{"value":340,"unit":"g"}},
              {"name":"harness","kind":"fabric","material":"aramid","mass":{"value":120,"unit":"g"}}],
  "pins":[{"thread":"M2.5","count":3}],
  "fitForce":{"value":15,"unit":"N"},
  "shoulder":{"value":45,"unit":"mm"},
  "forwardMass":{"value":0.9,"unit":"kg"},"aftMass":{"value":4.1,"unit":"kg"},
  "ceiling":{"gaugePressure":{"value":300,"unit":"kPa"}},
  "measure":{"value":0.05,"unit":"g"}}}' "Idempotency-Key: walk-$run-joint"
joint=$(id)

call GET "/api/joints/$joint/estimate"

for test in 1 2 3 4 5 6 7 8 9 10 11 12; do
  call GET "/api/joints/$joint/next-charge"
  decision=$(word decision)
  [ "$decision" = fire ] || break
  charge=$(grams charge)
  outcome=$(awk -v m="$charge" 'BEGIN { print (m < 0.72) ? "none" : (m < 0.84) ? "partial" : "separated" }')
  fired=$(date -u +%Y-%m-%dT%H:%M:%SZ)
  call POST "/api/joints/$joint/ground-tests" \
    "{\"charge\":{\"value\":$charge,\"unit\":\"g\"},\"outcome\":\"$outcome\",\"firedAt\":\"$fired\",\"notes\":\"walk, test $test\"}" \
    "Idempotency-Key: walk-$run-test-$test"
done
[ "$decision" = stop ] || { echo "walk: ended with '$decision', not with 'stop'" >&2; exit 1; }

call GET "/api/joints/$joint/flight-charge"
primary=$(grams primary)
call GET "/api/airframes/$airframe/history"
[ -n "$primary" ] || { echo "walk: no flight charge" >&2; exit 1; }
printf '\nflight charge %s g after %d tests\n' "$primary" "$((test - 1))"
