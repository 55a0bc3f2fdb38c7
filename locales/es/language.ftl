language-name = Español
# As numbers are written in most of the countries that read it: 1.5, not 1,5.
language-numbers = es-MX
