"""Pages made from a program or a plan: the athlete's paper sheet, the map, the guides.

Law: every number, name and sentence on a page comes from the texts or from the code that acts on
them, so that no page can drift from what happens. Nothing is decided here.
"""
