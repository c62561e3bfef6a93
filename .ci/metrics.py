"""Reads metrics from standard input with the parser of Prometheus's Python client and checks what an operator relies on."""
import sys

from prometheus_client.parser import text_string_to_metric_families

families = {family.name: family for family in text_string_to_metric_families(sys.stdin.read())}
for name, kind in {
    "scalepan_build_info": "gauge",
    "scalepan_requests": "counter",
    "scalepan_request_duration_seconds": "histogram",
    "scalepan_connections_closed": "counter",
    "scalepan_connections": "gauge",
    "scalepan_heap_used_bytes": "gauge",
}.items():
    found = families.get(name)
    if found is None or found.type != kind or not found.documentation:
        sys.exit(f"{name} must be a {kind} with a description, not {found}")
print(len(families), "metrics")
