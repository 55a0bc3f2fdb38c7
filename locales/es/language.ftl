language-name = Español
# As numbers are written in most of the countries that read it: 1.5, not 1,5.
language-numbers = es-MX
# While the page opens, before the program runs.
starting-lead = Una lavadora para abrir, medir y reparar, avería a avería. Todo lo que marca el medidor se calcula, como lo daría una máquina de verdad.
starting-opening = Abriendo el taller …
