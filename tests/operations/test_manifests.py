"""The Kubernetes manifests, the compose file of two replicas and the scrape example: sound by schema, and agreed with the settings."""

from __future__ import annotations

import re
import subprocess
import tempfile
from pathlib import Path
from typing import Any

import kubernetes_validate
import pytest
import yaml

from kilisho_api import server, settings, tables

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
FOLDER = "KILISHO_TABLE_FOLDER"


SINGLE = yaml.safe_load((DOCKER / "compose.yaml").read_text("utf-8"))
# The sizes that the manifests use, in bytes.
UNITS = {"k": 2**10, "m": 2**20, "g": 2**30, "Mi": 2**20, "Gi": 2**30, "": 1}


def stated(pairs: Any) -> dict[str, str]:
    """The environment of a container by name, as Kubernetes or Compose has it."""
    return {pair["name"]: pair["value"] for pair in pairs} if isinstance(pairs, list) else pairs


def environment(pairs: Any) -> settings.Settings:
    """Settings as a manifest states them; raises SettingsError for any that there is not. The folder of tables is there only inside."""
    return settings.read({**stated(pairs), "KILISHO_TABLE_FOLDER": tempfile.gettempdir()})


def spool_bytes(pairs: Any) -> int:
    """What tables may take in the folder of one container."""
    found = environment(pairs)
    return found.workers * found.tables_at_once * found.largest_table


def size(text: str) -> int:
    """A size in bytes."""
    found = re.fullmatch(r"(\d+)([A-Za-z]*)", text)
    assert found is not None
    return int(found[1]) * UNITS[found[2]]


def location(address: str) -> dict[str, str]:
    """The directives of one location of the proxy."""
    found = re.search(rf"location {re.escape(address)} \{{(.*?)\n        \}}", NGINX, re.DOTALL)
    assert found is not None
    return dict(re.findall(r"^ *([a-z_]+) ([^;]+);", found[1], re.MULTILINE))


def seconds(text: str) -> int:
    """A time of the proxy's."""
    return int(text[:-1]) * {"s": 1, "m": 60}[text[-1]]


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


def test_the_pod_gets_no_right_and_no_disk_but_for_tables() -> None:
    assert POD["securityContext"]["runAsNonRoot"] is True
    assert f"USER {POD['securityContext']['runAsUser']}:" in (DOCKER / "Dockerfile").read_text("utf-8")
    assert POD["securityContext"]["seccompProfile"] == {"type": "RuntimeDefault"}
    assert POD["automountServiceAccountToken"] is False
    assert POD["enableServiceLinks"] is False
    context = CONTAINER["securityContext"]
    assert context == {"allowPrivilegeEscalation": False, "readOnlyRootFilesystem": True, "capabilities": {"drop": ["ALL"]}}
    assert [mount["mountPath"] for mount in CONTAINER["volumeMounts"]] == ["/tmp", stated(CONTAINER["env"])[FOLDER]]
    assert MANIFESTS["network-policy"]["spec"]["egress"] == []
    assert CONTAINER["resources"]["requests"].keys() == {"cpu", "memory", "ephemeral-storage"}


def test_the_probes_ask_what_the_service_answers() -> None:
    asked = {probe: CONTAINER[probe]["httpGet"] for probe in ("startupProbe", "livenessProbe", "readinessProbe")}
    assert {probe: get["path"] for probe, get in asked.items()} == {
        "startupProbe": "/health",
        "livenessProbe": "/health",
        "readinessProbe": "/ready",
    }
    assert all(get["port"] == CONTAINER["ports"][0]["name"] for get in asked.values())


def test_the_cluster_waits_longer_than_the_service_takes_to_leave() -> None:
    chosen = environment(CONTAINER["env"])
    to_leave = chosen.drain_seconds + server.SECONDS_TO_SPEAK + chosen.grace_seconds
    assert to_leave < POD["terminationGracePeriodSeconds"]
    probe = CONTAINER["readinessProbe"]
    assert probe["periodSeconds"] * probe["failureThreshold"] < chosen.drain_seconds
    assert "lifecycle" not in CONTAINER  # a preStop hook would only come on top of the drain


@pytest.mark.parametrize("name", REPLICAS)
def test_a_replica_of_the_compose_file_is_as_bare_and_as_patient(name: str) -> None:
    service = REPLICAS[name]
    chosen = environment(service["environment"])
    assert chosen.drain_seconds + server.SECONDS_TO_SPEAK + chosen.grace_seconds < int(service["stop_grace_period"].removesuffix("s"))
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


def test_the_replicas_believe_the_proxy_and_nobody_else() -> None:
    proxy = COMPOSE["services"]["proxy"]["networks"]["inside"]["ipv4_address"]
    assert proxy not in {service["networks"]["inside"]["ipv4_address"] for service in REPLICAS.values()}
    assert {environment(service["environment"]).trusted_proxies for service in REPLICAS.values()} == {(f"{proxy}/32",)}
    assert NGINX.count("proxy_set_header X-Forwarded-For $remote_addr;") == NGINX.count("proxy_set_header X-Forwarded-For") == 1
    assert all("proxy_set_header" not in location(address) for address in ("/", f"= /v1/{tables.NAME}"))  # else none would be inherited


@pytest.mark.parametrize("name", REPLICAS)
def test_the_proxy_waits_longer_for_an_answer_than_the_service_ever_takes(name: str) -> None:
    """Else it would send a question that is still worked on to the other replica as well."""
    chosen = environment(REPLICAS[name]["environment"])
    longest = chosen.longest_answer * (1 + chosen.slow_waiting / chosen.slow_at_once)
    assert "timeout" in re.findall(r"proxy_next_upstream ([^;]+);", NGINX)[0]
    assert seconds(location("/")["proxy_read_timeout"]) > longest
    assert f"{chosen.longest_answer} s" in NGINX
    assert f"({chosen.slow_waiting}) may wait before it: {longest:.0f} s" in NGINX


def test_the_proxy_lets_through_what_the_service_takes_and_hangs_up_first() -> None:
    found = re.search(r"client_max_body_size (\d+)m;", NGINX)
    assert found is not None
    assert int(found[1]) * 2**20 >= settings.Settings().largest_body
    assert "keepalive_timeout" not in NGINX  # nginx's own 60 s
    assert server.KEEP_ALIVE_SECONDS > 60


def test_a_table_as_large_as_the_service_takes_goes_through_the_proxy_as_it_comes() -> None:
    """What the proxy kept of it would have to fit its own small folder."""
    directives = location(f"= /v1/{tables.NAME}")
    assert size(directives["client_max_body_size"]) == settings.Settings().largest_table
    assert all("KILISHO_LARGEST_TABLE" not in stated(service["environment"]) for service in REPLICAS.values())
    assert (directives["proxy_request_buffering"], directives["proxy_buffering"]) == ("off", "off")
    assert directives["proxy_pass"] == location("/")["proxy_pass"]


def test_the_service_gives_a_table_up_before_the_proxy_does() -> None:
    directives, chosen = location(f"= /v1/{tables.NAME}"), settings.Settings()
    waits = [seconds(directives[name]) for name in ("client_body_timeout", "proxy_send_timeout", "send_timeout")]
    assert all(wait > chosen.table_patience for wait in waits)
    # A row takes 10 microseconds and more (DEVELOPERS.md); a summary of all rows must come in time on a machine of half that speed.
    assert seconds(directives["proxy_read_timeout"]) >= chosen.longest_table * 20e-6
    assert seconds(directives["proxy_read_timeout"]) > chosen.longest_answer


def test_the_pod_has_room_for_as_many_tables_as_it_takes() -> None:
    [mount] = [one for one in CONTAINER["volumeMounts"] if one["mountPath"] == stated(CONTAINER["env"])[FOLDER]]
    [volume] = [one for one in POD["volumes"] if one["name"] == mount["name"]]
    room = size(volume["emptyDir"]["sizeLimit"])
    assert "medium" not in volume["emptyDir"]  # memory would count against the container's limit
    assert spool_bytes(CONTAINER["env"]) <= room
    resources = CONTAINER["resources"]
    assert room <= size(resources["requests"]["ephemeral-storage"]) <= size(resources["limits"]["ephemeral-storage"])


@pytest.mark.parametrize(("file", "services"), [(COMPOSE, REPLICAS), (SINGLE, SINGLE["services"])], ids=["replicas", "single"])
def test_the_compose_files_keep_tables_on_a_disk(file: Any, services: dict[str, Any]) -> None:
    """No volume of Compose has a limit, so the file says how much room the disk must have."""
    for service in services.values():
        [mounted] = service["volumes"]
        name, _, place = mounted.partition(":")
        assert (name in file["volumes"], place) == (True, service["environment"][FOLDER])
        assert all(not one.startswith(place) for one in service["tmpfs"])
        assert f":10001 /spool {place}\n" in (DOCKER / "Dockerfile").read_text("utf-8")
    text = (DOCKER / ("compose.replicas.yaml" if file is COMPOSE else "compose.yaml")).read_text("utf-8")
    found = re.search(r"room for (\d+) GB", text)
    assert found is not None
    assert int(found[1]) * 10**9 >= sum(spool_bytes(service["environment"]) for service in services.values())


def test_what_the_manual_says_of_room_for_tables_is_so() -> None:
    manual = (DOCKER / "README.md").read_text("utf-8")
    assert stated(CONTAINER["env"])[FOLDER] in manual
    assert f"{settings.Settings().largest_table // 10**6} MB" in manual


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
