import { blocksIn } from './state-block.ts';

/**
 * Blocks that one file alone has, wider than the agreed ones or new: `html/flags.js` of github.com/wiedehopf/tar1090 at
 * 28d21edc. An address that is only here counts neither as the State’s nor as outside its block. Marks are only given for
 * States without an agreed block.
 */
export const WIDER_BLOCKS = blocksIn(`004000 11 - Zimbabwe
030000 11 - Botswana
035000 11 - Comoros
048000 11 - Guinea-Bissau
04a000 11 - Lesotho
05a000 11 - Maldives
05e000 11 - Mauritania
060000 11 - Mauritius
06a000 12 - Qatar
074000 11 - Seychelles
076000 11 - Sierra Leone
07a000 11 - Eswatini
094000 11 - Benin
096000 11 - Cabo Verde
098000 11 - Djibouti
09e000 11 - São Tomé and Príncipe
0aa000 11 - Barbados
0ab000 11 - Belize
0ac000 13 - Colombia
0bc000 11 - Saint Vincent and the Grenadines
0ca000 11 - Antigua and Barbuda
0cc000 11 - Grenada
201000 11 - Namibia
202000 11 - Eritrea
4c8000 11 - Cyprus
4d0000 11 - Luxembourg
4d4000 11 - Monaco
500000 11 - San Marino
501000 11 - Albania
501800 11 - Croatia
502800 11 - Latvia
503800 11 - Lithuania
504800 11 - Moldova
505800 11 - Slovakia
506800 11 - Slovenia
507800 11 - Uzbekistan
510000 11 - Belarus
511000 11 - Estonia
512000 11 - North Macedonia
513000 11 - Bosnia and Herzegovina
514000 11 - Georgia
515000 11 - Tajikistan
516000 11 - Montenegro
600000 11 - Armenia
600800 11 - Azerbaijan
601000 11 - Kyrgyzstan
601800 11 - Turkmenistan
680000 11 - Bhutan
681000 11 - Micronesia, Federated States of
682000 11 - Mongolia
683000 11 - Kazakhstan
684000 11 - Palau
70c000 11 - Oman
895000 11 - Brunei
897000 11 - Solomon Islands
899000 11 - Taiwan
900000 11 - Marshall Islands
901000 11 - Cook Islands
902000 11 - Samoa
c8a000 11 - Nauru
c8c000 11 - Saint Lucia
c8d000 11 - Tonga
c8e000 11 - Kiribati
c90000 11 - Vanuatu
c91000 11 C3 Andorra
c92000 11 J7 Dominica
c93000 11 V4 Saint Kitts and Nevis
c94000 11 - South Sudan
c95000 11 4W Timor-Leste
c97000 11 T2 Tuvalu`);
