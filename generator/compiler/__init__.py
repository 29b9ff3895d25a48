"""The compiler: calculators in a strict subset of Python become small, readable JavaScript with the same answers, bit for bit.

The door is `script.py`: `compile_module`, `module_order`, `helpers_script`. The subset, and nothing else:

    module      docstring; `import math`; `from dataclasses import dataclass`; `from generator.calculators.x import y`;
                constants `NAME: type = expression`; records; functions
    type        int | float | bool | str | list[type] | record
    record      a frozen dataclass: annotated fields, perhaps with a literal as default, no methods; it may go on from one
                other record, and stands wherever that one is asked for
    function    annotated parameters without defaults, an annotated result, no recursion; every path ends in return or raise
    statement   x = e | x: type = e | x += e (-= *= and so on, of numbers) | xs.append(e), of a list made in this function
                | if, elif, else | while | for | break | continue | return e | raise ValueError("text") | pass
    for         over a list, range(...), enumerate(xs), zip(xs, ys); the same in comprehensions
    expression  literals, names, record.field; + - * / (// and % of ints); == != < <= > >= (chained, with a plain middle);
                and, or, not of bools; a if c else b; x in xs; xs[i]; xs[a:b]; [e for x in xs if c]; any(...) and all(...) of a
                comprehension; xs + ys; [e] * n; len abs round(x) int float min max sum (of ints); sorted(xs, key=lambda x: number);
                math.floor ceil sqrt fsum; calls of functions and records, keywords in the order of the parameters

Everything else is refused with file, line, column and what to write instead. A condition is a bool and nothing else. An int never
turns into a float by itself, except beside a float in arithmetic. A name has one type, and a value on every path to its use.
Text is stored, passed and compared; it is made only by `numbertext`, whose JavaScript is written by hand (numbertext.js).

The modules, lowest first: types, scope (the one door for expressions), modules (the top level), expressions, calls, statements, script.
"""
