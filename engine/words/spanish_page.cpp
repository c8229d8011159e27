// SPDX-License-Identifier: MIT
// The page of the browser around the window (gui/web/).
#include "engine/words/phrases.h"

namespace boughwork {

Chapter spanish_page() {
    return {
        {"Whose plan is it?", "¿De quién es el plan?"},
        {"Every group has a place of its own in this browser, and sees no other.",
         "Cada grupo tiene su propio sitio en este navegador y no ve ningún otro."},
        {"the group's name", "nombre del grupo"},
        {"begin", "empezar"},
        {"go on", "seguir"},
        {"take a copy home", "llevarse una copia"},
        {"wipe", "borrar"},
        {"wipe all that {0} has here", "borrar todo lo que {0} tiene aquí"},
        {"keep it", "no borrarlo"},
        {"another group", "otro grupo"},
        {"read the verdict", "leer el veredicto"},
        {"hide the verdict", "ocultar el veredicto"},
        {"save a picture", "guardar una imagen"},
        {"print", "imprimir"},
        {"licences", "licencias"},
        {"Score", "Puntuación"},
        {"What the referee found", "Lo que ha visto el árbitro"},
        {"Nothing is wrong.", "Todo está bien."},
        {"The challenge asks", "El reto pide"},
        {"met", "cumplido"},
        {"not met", "sin cumplir"},
        {"The planning table. Tab goes from one thing to the next, F1 tells all keys. To leave it press Escape, then "
         "Tab.",
         "La mesa de planificación. Tab pasa de una cosa a la siguiente, F1 dice todas las teclas. Para salir pulsa "
         "Escape y después Tab."},
        {"Let go, and the file is opened.", "Suelta, y se abre el archivo."},
        {"This browser keeps nothing of this page. Save before you close it.",
         "Este navegador no guarda nada de esta página. Guarda antes de cerrarla."},
        {"Something went wrong here. Load the page again: what you did is kept.",
         "Aquí algo ha fallado. Vuelve a cargar la página: lo que hiciste está guardado."},
        {"The browser's storage is full.", "El almacenamiento del navegador está lleno."},
        {"What it holds there stays as it was.", "Lo que contiene se queda como estaba."},
        {"Take copies home and wipe what nobody needs.", "Llévate copias y borra lo que nadie necesita."},
        {"Try another browser.", "Prueba con otro navegador."},
        {"from this computer", "de este ordenador"},
    };
}

}  // namespace boughwork
