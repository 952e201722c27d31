"""Addresses of callers and proxies."""

from __future__ import annotations

from ipaddress import ip_address, ip_network

# A household or a rented machine has all addresses of such a network, and would be as many callers as it likes.
IPV6_PREFIX = 64
LONGEST_SHOWN = 64


def read_networks(text: str) -> tuple[str, ...]:
    """Addresses and networks separated by commas; raises ValueError with what was expected."""
    try:
        return tuple(str(ip_network(part.strip())) for part in text.split(",") if part.strip())
    except ValueError:
        raise ValueError("addresses or networks such as 10.0.0.7, 10.1.0.0/16, separated by commas; no host names and no *") from None


def network_of(host: str) -> str:
    """Whom an address stands for: itself or, in IPv6, its network. Text that is no address stands for itself."""
    try:
        address = ip_address(host)
    except ValueError:
        return host[:LONGEST_SHOWN]
    if address.version == 6 and address.ipv4_mapped is not None:
        return str(address.ipv4_mapped)
    return str(ip_network((address, IPV6_PREFIX), strict=False)) if address.version == 6 else str(address)
