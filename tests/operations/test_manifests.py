"""The Kubernetes manifests, the compose file of two replicas and the scrape example: sound by schema, and agreed with the settings."""

from __future__ import annotations

import re
import subprocess
from pathlib import Path
from typing import Any

import kubernetes_validate
import pytest
import yaml

from kilisho_api import server, settings

DOCKER = Path(__file__).resolve().parents[2] / "docker"
NGINX = (DOCKER / "nginx.conf").read_text("utf-8")
MANIFESTS = {path.stem: yaml.safe_load(path.read_text("utf-8")) for path in sorted((DOCKER / "kubernetes").glob("*.yaml"))}
# The oldest release that is still looked after and the newest that the schemas know.
RELEASES = ("1.34", "1.37")
DEPLOYMENT = MANIFESTS["deployment"]
POD = DEPLOYMENT["spec"]["template"]["spec"]
[CONTAINER] = POD["containers"]
COMPOSE = yaml.safe_load((DOCKER / "compose.replicas.yaml").read_text("utf-8"))
REPLICAS = {name: service for name, service in COMPOSE["services"].items() if name != "proxy"}
LABELS = {"app.kubernetes.io/name": "kilisho"}


def environment(pairs: Any) -> settings.Settings:
    """Settings as a manifest states them; raises SettingsError for any that there is not."""
    stated = {pair["name"]: pair["value"] for pair in pairs} if isinstance(pairs, list) else pairs
    return settings.read(stated)


@pytest.mark.parametrize("release", RELEASES)
@pytest.mark.parametrize("name", MANIFESTS)
def test_the_cluster_takes_it(name: str, release: str) -> None:
    kubernetes_validate.validate(MANIFESTS[name], release, strict=True)


def test_a_manifest_with_a_misspelt_member_is_found() -> None:
    with pytest.raises(kubernetes_validate.ValidationError):
        kubernetes_validate.validate({**MANIFESTS["service"], "specs": {}}, RELEASES[-1], strict=True)


def test_there_is_all_that_two_replicas_need() -> None:
    kinds = {manifest["kind"] for manifest in MANIFESTS.values()}
    assert kinds == {"Deployment", "Service", "PodDisruptionBudget", "NetworkPolicy"}
    assert DEPLOYMENT["spec"]["replicas"] == 2
    assert DEPLOYMENT["spec"]["strategy"]["rollingUpdate"] == {"maxUnavailable": 0, "maxSurge": 1}
    assert MANIFESTS["disruption-budget"]["spec"]["minAvailable"] < DEPLOYMENT["spec"]["replicas"]


def test_all_of_them_mean_the_same_pods_and_port() -> None:
    selectors = [DEPLOYMENT["spec"]["selector"], MANIFESTS["disruption-budget"]["spec"]["selector"]]
    selectors.append(MANIFESTS["network-policy"]["spec"]["podSelector"])
    assert all(selector == {"matchLabels": LABELS} for selector in selectors)
    assert MANIFESTS["service"]["spec"]["selector"] == DEPLOYMENT["spec"]["template"]["metadata"]["labels"] == LABELS
    port = settings.Settings().port
    assert [one["containerPort"] for one in CONTAINER["ports"]] == [port]
    assert MANIFESTS["service"]["spec"]["ports"][0]["targetPort"] == CONTAINER["ports"][0]["name"]
    assert MANIFESTS["network-policy"]["spec"]["ingress"][0]["ports"] == [{"protocol": "TCP", "port": port}]


def test_the_pod_gets_no_right_and_no_disk() -> None:
    assert POD["securityContext"]["runAsNonRoot"] is True
    assert f"USER {POD['securityContext']['runAsUser']}:" in (DOCKER / "Dockerfile").read_text("utf-8")
    assert POD["securityContext"]["seccompProfile"] == {"type": "RuntimeDefault"}
    assert POD["automountServiceAccountToken"] is False
    assert POD["enableServiceLinks"] is False
    context = CONTAINER["securityContext"]
    assert context == {"allowPrivilegeEscalation": False, "readOnlyRootFilesystem": True, "capabilities": {"drop": ["ALL"]}}
    assert [mount["mountPath"] for mount in CONTAINER["volumeMounts"]] == ["/tmp"]
    assert MANIFESTS["network-policy"]["spec"]["egress"] == []
    assert CONTAINER["resources"]["requests"].keys() == {"cpu", "memory"}


def test_the_probes_ask_what_the_service_answers() -> None:
    asked = {probe: CONTAINER[probe]["httpGet"] for probe in ("startupProbe", "livenessProbe", "readinessProbe")}
    assert {probe: get["path"] for probe, get in asked.items()} == {
        "startupProbe": "/health",
        "livenessProbe": "/health",
        "readinessProbe": "/ready",
    }
    assert all(get["port"] == CONTAINER["ports"][0]["name"] for get in asked.values())


def test_the_cluster_waits_longer_than_the_service_takes_to_leave() -> None:
    stated = environment(CONTAINER["env"])
    to_leave = stated.drain_seconds + server.SECONDS_TO_SPEAK + stated.grace_seconds
    assert to_leave < POD["terminationGracePeriodSeconds"]
    probe = CONTAINER["readinessProbe"]
    assert probe["periodSeconds"] * probe["failureThreshold"] < stated.drain_seconds
    assert "lifecycle" not in CONTAINER  # a preStop hook would only come on top of the drain


@pytest.mark.parametrize("name", REPLICAS)
def test_a_replica_of_the_compose_file_is_as_bare_and_as_patient(name: str) -> None:
    service = REPLICAS[name]
    stated = environment(service["environment"])
    assert stated.drain_seconds + server.SECONDS_TO_SPEAK + stated.grace_seconds < int(service["stop_grace_period"].removesuffix("s"))
    assert service["read_only"] is True
    assert service["cap_drop"] == ["ALL"]
    assert "ports" not in service


def test_proxy_and_scraper_know_the_replicas() -> None:
    port = settings.Settings().port
    places = {f"{service['networks']['inside']['ipv4_address']}:{port}" for service in REPLICAS.values()}
    assert len(places) == 2
    assert set(re.findall(r"^ *server ([\d.:]+) ", NGINX, re.MULTILINE)) == places
    [job] = yaml.safe_load((DOCKER / "prometheus.yaml").read_text("utf-8"))["scrape_configs"]
    assert {target for one in job["static_configs"] for target in one["targets"]} == places
    assert job["metrics_path"] == "/metrics"


def test_the_proxy_lets_through_what_the_service_takes_and_hangs_up_first() -> None:
    found = re.search(r"client_max_body_size (\d+)m;", NGINX)
    assert found is not None
    assert int(found[1]) * 2**20 >= settings.Settings().largest_body
    assert "keepalive_timeout" not in NGINX  # nginx's own 60 s
    assert server.KEEP_ALIVE_SECONDS > 60


def test_a_replica_drains_for_longer_than_the_proxy_leaves_the_other_alone() -> None:
    """Else there is a moment in which the one is gone and the other is not asked yet."""
    waits = {int(seconds) for seconds in re.findall(r"fail_timeout=(\d+)s;", NGINX)}
    assert waits == {1}
    assert all(int(service["environment"]["KILISHO_DRAIN_SECONDS"]) > max(waits) for service in REPLICAS.values())


def test_the_proxy_is_open_to_this_computer_only_and_gets_no_right() -> None:
    service = COMPOSE["services"]["proxy"]
    assert service["ports"] == ["127.0.0.1:8080:8080"]
    assert "listen 8080;" in NGINX
    assert service["cap_drop"] == ["ALL"]
    assert service["read_only"] is True
    assert service["volumes"] == ["./nginx.conf:/etc/nginx/nginx.conf:ro"]


def test_the_words_of_the_compose_file_replace_every_replica() -> None:
    text = (DOCKER / "compose.replicas.yaml").read_text("utf-8")
    command = re.search(r"^#   (for one in .*; done)$", text, re.MULTILINE)
    assert command is not None
    assert set(re.findall(r"kilisho-\w", command[1])) == REPLICAS.keys()
    assert subprocess.run(["sh", "-n", "-c", command[1]], check=False).returncode == 0
