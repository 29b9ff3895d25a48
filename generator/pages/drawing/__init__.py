"""Tools of the anatomy drawings: ways, shapes, wood, and their SVG."""
