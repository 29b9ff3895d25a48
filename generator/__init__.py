"""The decision guide for winter pruning of grapevines: from a knowledge base of rules to a static site."""
