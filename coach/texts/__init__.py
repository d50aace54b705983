"""Files to model: the strict reader, the loaders, the named checks, the rendering of findings.

Law: only this room and the diary's open files. Every parsed thing keeps its file, line and column.
A plan or program with one error finding never reaches a session.
"""
