"""The HTTP boundary of Kilisho: routes, negotiation, problems, contract. Everything that is known or computed is in :mod:`kilisho`."""
