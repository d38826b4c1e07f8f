import type { LexiconSource } from '../shape.ts'

/** Signs told by a picture, where no word names them; each is asked about. */
export const oblique: LexiconSource['words'] = {
  'oblique-saddle': `
    (como/como si/parece que/es como) (si/) (estuviera/estuviese/estoy/estar) (sentado/sentada) (en/sobre) (una/un/) (nube/almohada/cojin/esponja/algodon/globo/corcho/aire/nada/gomaespuma),
    (me/) (toco/toque/lavo/lave/seco/limpio) (ahi/ahi abajo/por ahi/mis partes) y (nada/no noto/no siento/como si nada)`,
  'oblique-bladder': `
    (caneria/canerias/tuberia/tuberias/grifo/fontaneria/manguera/desague) (ya/) no (va/van/funciona/funcionan/tira/tiran/corre/corren/abre/arranca/suelta),
    (minutos/rato/horas/media hora/siglos/un buen rato/una eternidad) (sentado/sentada/de pie/parado/parada/) (en el/delante del/frente al) (bano/vater/inodoro/aseo/wc/urinario) y (nada/no sale/no sale nada/ni gota),
    (siempre/siento que/como que/noto que) (me/se me/) queda (algo/mas/pis/pipi/orina) (dentro/por salir/ahi), se me queda (el/la) (pis/pipi/orina) dentro,
    nunca (termino/acabo) de (orinar/mear/vaciar/hacer pis/hacer pipi), (no/nunca) (vacio/se vacia/se me vacia) (la vejiga/del todo)`,
  'oblique-bowel': `lo de mayores, aguas mayores`,
  'oblique-both': `
    (la/mi) (pierna/) buena (ya/ahora/) (tampoco/no es buena/no esta bien/no esta/ya no/empieza/empezo), (la/mi) (pierna/) sana (ya/ahora/) (tampoco/no esta/ya no/empieza/empezo)`,
  'oblique-weakness': `
    (camino/ando/caminando/andando) (como/como con/como un/como una/como si llevara) (aletas/robot/pinguino/zombi/ciguena/pato/muneco/marioneta/borracho de piernas/chancletas),
    (la/mi/esa) (pierna/rodilla/pantorrilla) (derecha/izquierda/mala/) (no estaba/ya no estaba/no esta ahi/no estaba ahi/desaparecio/dejo de estar),
    (para no/por no) (tropezar/tropezarme/engancharme/arrastrar/arrastrarla) (con/) (la punta/el pie/los dedos/el suelo), (levanto/levantando/subo/subiendo) (mucho/) (la/la otra/) rodilla para (no/que),
    (me/) (tuvieron/tienen/tuvo/tiene) que (levantar/levantarme/sujetar/sujetarme/alzar/alzarme/cargar/cargarme/ayudar a levantar/ayudarme a levantar),
    (la/mi/esa) (pierna/rodilla) no (iba/va/tira/tiraba/anda/andaba/funciona/funcionaba/jala/coopera/hace caso/me hace caso),
    (el/mi/ese) (pie/tobillo) no (iba/va/tira/tiraba/agarra/funciona/funcionaba/coopera/hace caso/me hace caso)`,
  'oblique-chest': `
    (cai/me cai/caigo/cayo) (redondo/redonda/a plomo/desplomado/desplomada), me desplome, me he desplomado`,
  'oblique-stroke': `
    se me (cae/escapa/sale) (la baba/el agua/el cafe/la bebida/la comida/el mate/la sopa) (por/de) (un lado/el lado/un costado/una esquina), (babeo/babeando) (por/de) (un lado/un costado),
    (hablo/hablando/sueno) (como/como un/como una/como si estuviera) (borracho/borracha)`,
  'oblique-harm': `
    no (voy a/quiero) (molestar/molestarte/molestarles/estorbar/dar guerra/dar la lata) (mas/mucho mas/por mucho tiempo/mucho tiempo mas), (ya no/no) (molestare/sere una carga/estorbare),
    (pronto/ya) (dejare/voy a dejar) de (molestar/ser una carga/estorbar/dar guerra)`,
}
