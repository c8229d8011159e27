// SPDX-License-Identifier: MIT
// What the challenge asks of a whole plan, how far it is met, and the bonuses.
#include "engine/words/phrases.h"

namespace boughwork {

Chapter spanish_challenge_lines() {
    return {
        {"at least {0}", "al menos {0}"},
        {"exactly {0}", "exactamente {0}"},
        {"at most {0}", "como máximo {0}"},
        {"{0} to {1}", "de {0} a {1}"},
        {"{0} piece that counts", "{0} pieza que cuenta"},
        {"{0} pieces that count", "{0} piezas que cuentan"},
        {"pieces that count: {2}; {0} allowed", "piezas que cuentan: {2}; se permite {0}"},
        {"pieces that count: {2}; {0} needed", "piezas que cuentan: {2}; pedido: {0}"},
        {"{0} branch", "{0} rama"},
        {"{0} branches", "{0} ramas"},
        {"branches: {2}; {0} allowed", "ramas: {2}; se permite {0}"},
        {"branches: {2}; {0} needed", "ramas: {2}; pedido: {0}"},
        {"{0} piece on branch {1}", "{0} pieza en la rama {1}"},
        {"{0} pieces on branch {1}", "{0} piezas en la rama {1}"},
        {"pieces on branch {1}: {2}; {0} allowed", "piezas en la rama {1}: {2}; se permite {0}"},
        {"pieces on branch {1}: {2}; {0} needed", "piezas en la rama {1}: {2}; pedido: {0}"},
        {"at most {0} sheet of paper", "como máximo {0} hoja de papel"},
        {"at most {0} sheets of paper", "como máximo {0} hojas de papel"},
        {"sheets of paper: not counted yet; at most {0} allowed", "hojas de papel: aún sin contar; máximo {0}"},
        {"at least {0} piece", "al menos {0} pieza"},
        {"at least {0} pieces, no two alike", "al menos {0} piezas, todas distintas"},
        {"no two alike: {0}; {1} needed", "distintas: {0}; mínimo {1}"},
        {"at least {0} {1} triangle", "al menos {0} triángulo {1}"},
        {"at least {0} {1}", "al menos {0} {1}"},
        {"{0}: {1}; {2} needed", "{0}: {1}; mínimo {2}"},
        {"at least {0}% {1}, by number", "al menos un {0}% de {1}, por cantidad"},
        {"at least {0}% {1}, by points", "al menos un {0}% de {1}, por puntos"},
        {"at most {0}% {1}, by number", "como máximo un {0}% de {1}, por cantidad"},
        {"at most {0}% {1}, by points", "como máximo un {0}% de {1}, por puntos"},
        {"{0}: {1} of {2}; {3} needed", "{0}: {1} de {2}; mínimo {3}"},
        {"{0}: {1} of {2} points; {3} needed", "{0}: {1} de {2} puntos; mínimo {3}"},
        {"{0}: {1} of {2}; at most {3} allowed", "{0}: {1} de {2}; máximo {3}"},
        {"{0}: {1} of {2} points; at most {3} allowed", "{0}: {1} de {2} puntos; máximo {3}"},
        {"{0}: no triangle counts yet; at least {1}%", "{0}: aún no cuenta ningún triángulo; al menos un {1}%"},
        {"{0}: no triangle counts yet; at most {1}%", "{0}: aún no cuenta ningún triángulo; como máximo un {1}%"},
        {"after settling the tree stands and every piece still counts",
         "al quedar quieto, el árbol se tiene en pie y cada pieza sigue contando"},
        {"after settling: not worked out yet", "al quedar quieto: aún sin calcular"},
        {"after settling: it could not be worked out", "al quedar quieto: no se ha podido calcular"},
        {"after settling: the tree tips over", "al quedar quieto: el árbol vuelca"},
        {"after settling: branch {0} is broken", "al quedar quieto: la rama {0} está rota"},
        {"after settling: {0} of {1} still count", "al quedar quieto: siguen contando {0} de {1}"},

        {"{0}: {1} times {2}", "{0}: {1} veces {2}"},
        {"hung {0} deep", "en el puesto {0} de su cadena"},
        {"{0}: met", "{0}: cumplido"},
        {"{0}: not met", "{0}: sin cumplir"},
    };
}

}  // namespace boughwork
