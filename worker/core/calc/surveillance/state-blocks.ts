import { blocksIn } from './state-block.ts';

/**
 * Blocks that two independent open data files give to the same State; where their sizes differ, the largest block that
 * lies in both: `html/flags.js` of github.com/wiedehopf/tar1090 at 28d21edc and
 * `code-blocks/schema-01/code-blocks.csv` of github.com/vradarserver/standing-data at 0bcf090d. The table in the
 * appendix to ICAO Annex 10, Vol. III, ch. 9 was not read.
 *
 * Marks are those that two files agree on: `registration-prefixes/schema-01/reg-prefixes.csv` of
 * github.com/vradarserver/standing-data at 6057baee and `traffic/data/basic/patterns.json` of
 * github.com/xoolive/traffic at 25131b06. B is left out, because four registers share it.
 */
export const STATE_BLOCKS = blocksIn(`004000 10 Z Zimbabwe
006000 12 C9 Mozambique
008000 15 ZS,ZT,ZU South Africa
010000 15 SU Egypt
018000 15 5A Libya
020000 15 CN Morocco
028000 15 TS Tunisia
030000 10 A2 Botswana
032000 12 9U Burundi
034000 12 TJ Cameroon
035000 10 D6 Comoros
036000 12 TN Republic of the Congo
038000 12 TU Côte d’Ivoire
03e000 12 TR Gabon
040000 12 ET Ethiopia
042000 12 3C Equatorial Guinea
044000 12 9G Ghana
046000 12 3X Guinea
048000 10 J5 Guinea-Bissau
04a000 10 7P Lesotho
04c000 12 5Y Kenya
050000 12 A8 Liberia
054000 12 5R Madagascar
058000 12 7Q Malawi
05a000 10 8Q Maldives
05c000 12 TZ Mali
05e000 10 5T Mauritania
060000 10 3B Mauritius
062000 12 5U Niger
064000 12 5N Nigeria
068000 12 5X Uganda
06a000 10 A7 Qatar
06c000 12 TL Central African Republic
06e000 12 9XR Rwanda
070000 12 6V,6W Senegal
074000 10 S7 Seychelles
076000 10 9L Sierra Leone
078000 12 6O Somalia
07a000 10 3DC Eswatini
07c000 12 ST Sudan
080000 12 5H Tanzania
084000 12 TT Chad
088000 12 5V Togo
08a000 12 9J Zambia
08c000 12 9S DR Congo
090000 12 D2 Angola
094000 10 TY Benin
096000 10 D4 Cabo Verde
098000 10 J2 Djibouti
09a000 12 C5 Gambia
09c000 12 XT Burkina Faso
09e000 10 S9 São Tomé and Príncipe
0a0000 15 7T Algeria
0a8000 12 C6 Bahamas
0aa000 10 8P Barbados
0ab000 10 V3 Belize
0ac000 12 HJ,HK Colombia
0ae000 12 TI Costa Rica
0b0000 12 CU Cuba
0b2000 12 YS El Salvador
0b4000 12 TG Guatemala
0b6000 12 8R Guyana
0b8000 12 HH Haiti
0ba000 12 HR Honduras
0bc000 10 J8 Saint Vincent and the Grenadines
0be000 12 6Y Jamaica
0c0000 12 YN Nicaragua
0c2000 12 HP Panama
0c4000 12 HI Dominican Republic
0c6000 12 9Y Trinidad and Tobago
0c8000 12 PZ Suriname
0ca000 10 V2 Antigua and Barbuda
0cc000 10 J3 Grenada
0d0000 15 XA,XB,XC Mexico
0d8000 15 YV Venezuela
100000 20 RA,RF Russia
201000 10 V5 Namibia
202000 10 E3 Eritrea
300000 18 I Italy
340000 18 EC,EM Spain
380000 18 F France
3c0000 18 D Germany
400000 18 2,G,M,VP,VQ,ZJ United Kingdom
440000 15 OE Austria
448000 15 OO Belgium
450000 15 LZ Bulgaria
458000 15 OY Denmark
460000 15 OH Finland
468000 15 SX Greece
470000 15 HA Hungary
478000 15 LN Norway
480000 15 P4,PH,PJ Netherlands
488000 15 SN,SP Poland
490000 15 CR,CS Portugal
498000 15 OK Czechia
4a0000 15 YR Romania
4a8000 15 SE Sweden
4b0000 15 HB Switzerland
4b8000 15 TC Turkey
4c0000 15 YU Serbia
4c8000 10 5B Cyprus
4ca000 12 EI,EJ Ireland
4cc000 12 TF Iceland
4d0000 10 LX Luxembourg
4d2000 11 9H Malta
4d4000 10 3A Monaco
500000 10 T7 San Marino
501000 10 ZA Albania
501c00 10 9A Croatia
502c00 10 YL Latvia
503c00 10 LY Lithuania
504c00 10 ER Moldova
505c00 10 OM Slovakia
506c00 10 S5 Slovenia
507c00 10 UK Uzbekistan
508000 15 UR Ukraine
510000 10 EW Belarus
511000 10 ES Estonia
512000 10 Z3 North Macedonia
513000 10 E7 Bosnia and Herzegovina
514000 10 4L Georgia
515000 10 EY Tajikistan
516000 10 4O Montenegro
600000 10 EK Armenia
600800 10 4K Azerbaijan
601000 10 EX Kyrgyzstan
601800 10 EZ Turkmenistan
680000 10 A5 Bhutan
681000 10 V6 Micronesia, Federated States of
682000 10 JU Mongolia
683000 10 UP Kazakhstan
684000 10 - Palau
700000 12 YA Afghanistan
702000 12 S2 Bangladesh
704000 12 XY,XZ Myanmar
706000 12 9K Kuwait
708000 12 RDPL Laos
70a000 12 9N Nepal
70c000 10 A4O Oman
70e000 12 XU Cambodia
710000 15 HZ Saudi Arabia
718000 15 HL South Korea
720000 15 P North Korea
728000 15 YI Iraq
730000 15 EP Iran
738000 15 4X Israel
740000 15 JY Jordan
748000 15 OD Lebanon
750000 15 9M Malaysia
758000 15 RP Philippines
760000 15 AP Pakistan
768000 15 9V Singapore
770000 15 4R Sri Lanka
778000 15 YK Syria
780000 18 - China
7c0000 18 VH Australia
800000 18 VT India
840000 18 JA Japan
880000 15 HS Thailand
888000 15 VN Viet Nam
890000 12 7O Yemen
894000 12 A9C Bahrain
895000 10 V8 Brunei
896000 12 A6 United Arab Emirates
897000 10 H4 Solomon Islands
898000 12 P2 Papua New Guinea
899000 10 - Taiwan
8a0000 15 PK Indonesia
900000 10 V7 Marshall Islands
901000 10 E5 Cook Islands
902000 10 5W Samoa
a00000 20 N United States
c00000 18 C Canada
c80000 15 ZK,ZL,ZM New Zealand
c88000 12 DQ Fiji
c8a000 10 C2 Nauru
c8c000 10 J6 Saint Lucia
c8d000 10 A3 Tonga
c8e000 10 T3 Kiribati
c90000 10 YJ Vanuatu
e00000 18 LQ,LV Argentina
e40000 18 PP,PR,PS,PT,PU Brazil
e80000 12 CC Chile
e84000 12 HC Ecuador
e88000 12 ZP Paraguay
e8c000 12 OB Peru
e90000 12 CX Uruguay
e94000 12 CP Bolivia`);
