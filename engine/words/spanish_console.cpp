// SPDX-License-Identifier: MIT
// The console's report and messages; its commands and options are not said but written.
#include "engine/words/phrases.h"

namespace boughwork {

Chapter spanish_console() {
    return {
        {"The referee says", "El árbitro dice"},
        {"The challenge: {0}", "El reto: {0}"},
        {"fingerprint {0}", "huella {0}"},
        {"Pieces", "Piezas"},
        {"Every hung piece counts.", "Cada pieza colgada cuenta."},
        {"No piece hangs yet.", "Aún no hay piezas colgadas."},
        {"Fix: {0}, {1}.", "Arreglo: {0}, {1}."},
        {"Another way: {0}", "Otra forma: {0}"},
        {"It asks nothing of the plan as a whole.", "No pide nada del plan entero."},
        {"? not judged", "? sin juzgar"},
        {"+ met", "+ cumplido"},
        {"! not met", "! sin cumplir"},
        {"Bonuses", "Premios"},
        {"No.", "N.º"},
        {"sides, {0}", "lados, {0}"},
        {"kind", "clase"},
        {"hangs from", "cuelga de"},
        {"{0} (close call)", "{0} (dudoso)"},
        {"does not count: {0}", "no cuenta: {0}"},
        {"in the envelope", "en el sobre"},
        {"nothing", "nada"},
        {"piece {0}, side {1}", "pieza {0}, lado {1}"},

        {"The file has no plan \"{0}\".", "El archivo no tiene el plan \"{0}\"."},
        {"Ask for one of its plans: {0}.", "Pide uno de sus planes: {0}."},
        {"\"{0}\" does not say which kind of picture it is to be.", "\"{0}\" no dice qué clase de imagen quieres."},
        {"Let the name end in .png, .svg or .pdf.", "Haz que el nombre acabe en .png, .svg o .pdf."},
        {"There is no command.", "No hay ninguna orden."},
        {"\"{0}\" is no command.", "\"{0}\" no es una orden."},
        {"Use check, table, settle, hands or picture. To see how to call them: boughwork --help",
         "Usa check, table, settle, hands o picture. Para ver cómo se llaman: boughwork --help"},
        {"To see how to call it: boughwork {0} --help", "Para ver cómo se llama: boughwork {0} --help"},
        {"The result could not be written.", "No se ha podido escribir el resultado."},
        {"See that there is room where it goes.", "Mira si hay sitio donde tiene que ir."},
        {"There is no display for a window ({0}). Use the commands without a window: boughwork --help",
         "No hay pantalla para una ventana ({0}). Usa las órdenes sin ventana: boughwork --help"},
        {"The window cannot be opened: {0}.", "No se puede abrir la ventana: {0}."},
        {"Start it on a desktop with OpenGL 3.2, or use the commands without a window (--help).",
         "Ábrelo en un escritorio con OpenGL 3.2 o usa las órdenes sin ventana (--help)."},
        {"The typeface Andika is missing ({0}).", "Falta el tipo de letra Andika ({0})."},
        {"Install the package fonts-sil-andika.", "Instala el paquete fonts-sil-andika."},
        {"OpenGL 3.2 did not start", "OpenGL 3.2 no ha arrancado"},
    };
}

}  // namespace boughwork
