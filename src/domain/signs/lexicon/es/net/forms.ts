import type { NetSource } from '../../shape.ts'

/** More persons, tenses and turns of the words of the other files. */
export const forms: NetSource['words'] = {
  cough: `tosido, toso, tosia, tosiera, escupido, escupiendo, escupia, expectorar, expectoracion, moco(/s), arcadas`,
  'arm-fail': `
    pesa, pesan, tonelada, dejo de (funcionar/responder/obedecer/moverse), deja de (funcionar/responder),
    ha dejado de
    (funcionar/responder),
    no (funciona/funcionaba/funciono/se mueve/se movia/se abre/se cierra/coordina/va/quiere), no
    coordino, descoordinad(o/a), se me ha (caido/quedado/dormido/ido), rebelde, de palo, tiesa, tieso, se fue,
    se durmio`,
  speech: `expresarme, explicarme, contestar, responder, saludar, hablarle, pronuncio, converso, platicar, silabas, erre`,
  'speech-fail': `
    no se me (entiende/entendia/entiende nada/comprende), nadie me entiende,
    no me (entienden/comprenden/entendieron), se me
    (pega/pegan/pego/duerme/cruzan/cruza), raro, lento, lenta, a medias, incompletas, inventadas, al reves,
    sin orden`,
  'speech-said': `
    (no/ya no) se me (entiende/entendia/comprende) (al hablar/cuando hablo/lo que digo),
    hablo y (no/nadie) (se/me/)
    (me/) (entiende/entienden), (arrastro/arrastrando/arrastraba) las palabras,
    hablar como si (tuviera/estuviera)`,
  'limp-arm': `
    pesa, tonelada, dejo de (funcionar/responder/moverse), ha dejado de (funcionar/responder),
    no (funciona/coordina/se
    mueve), de plomo, de palo`,
  'side-fail': `no coordina, no coordino, torpe, no funciona, dejo de (funcionar/responder), mas debil, sin sentir, hormiguea, pesa`,
  'side-body': `lado izquierdo, lado derecho, el lado (izquierdo/derecho) (de la cara/entero), todo el lado`,
  face: `boca, ojo y boca, carrillo(/s), entrecejo, frente`,
  droop: `se (me/) (chueca/enchueca/enchueco/vencio/desfigura/desfiguro), enchuecad(o/a), virad(o/a), desencajad(o/a), se movia, asimetria, no mueve`,
  sight: `visual, gafas, lentes, retina, campo, pupila`,
  'sight-fail': `perdiendo, se (me/) (va/fue) (por/a) ratos, a trozos, con manchas, emborronad(o/a), empañad(o/a), empanad(o/a), niebla, negr(o/a)`,
  'vague-place': `donde (me/) (apoyo/siento/sento), esa parte de mi`,
  private: `
    (la/) zona (donde/en la que/que) (me/) (apoyo/siento/apoya), zona de apoyo, ahi donde me (apoyo/siento),
    lo de entre las piernas,
    el interior de las nalgas, la zona del papel, el agujero, el agujerito, los de abajo, las de abajo,
    la hendidura, sexo, por delante, bajo
    vientre`,
  'no-feel': `
    no (me/te/) (noto/siento/notaba/sentia) (la/el/los/las/mi/mis), dejado de (notar/sentir),
    dejo de (notarse/sentirse), no (notando/sintiendo), ya ni
    (siento/noto), ni (un poco/tantito), no (lo/la) (percibia/percibi),
    (pierdo/perdi/perdido/perdiendo) (el/la/) (tacto/sensibilidad/sensacion)`,
  unreal: `como (lavar/limpiar/secar/tocar/rascar) (a/) (una/un/otra/otro), muneca, maniqui, no soy yo, como si fuera otro`,
  'wet-unseen': `
    se me (escapo/escapa/ha escapado/sale/salio/fue) (y/) (ni/no) (lo/me) (note/noto/entere/senti),
    (note/noto/notaba/encontre/descubri)
    (humedad/humedo/mojado/mojada) (en/y/sin),
    (me noto/me siento/estoy/voy/ando) (goteando/mojada/mojado/humeda), goteo (postmiccional/despues/al
    terminar), (gotea/goteo/goteando) despues`,
  'pee-fail': `humedad, goteando, gotean, a ratitos, a ratos, a trozos, a saltitos, se para, se detiene, detenido, no baja, no acaba, interrump(e/ido), sin presion, menos presion`,
  poo: `evacuo, evacuar, evacuacion, por atras, ir al bano de vientre, bano grande, la caca, mi caca, de caca, los gases, el gas, un gas`,
  'poo-fail': `
    desaparecio, desaparecido, no (cierro/cierra/siento/noto/la noto/se cierra/controlo/aprieto),
    no (cierro/cierra) bien, premio, sorpresa, sin saber(/lo), sin darme
    cuenta, sin notar, no (me entero/me entere), se me (ha ido/iba), vaciado, no sostengo`,
  'sex-said': `
    se (me/) (queda/quedo/pone/puso/vuelve) (blanda/floja/blando/flojo/muerta/a medias) (a/enseguida/al/en/antes),
    no hay (manera/forma) de que (se/me) (levante/pare/empalme/ponga), ni
    acercarme al (climax/orgasmo/final), no (llego/llegaba/llegue) al (climax/orgasmo), climax`,
  sex: `erotic(o/a), deseo sexual, caricias, acariciaba, acaricia, penetrar, cama con mi, coger, cogiendo, ponerse, empinarse, tocarme abajo, besarnos`,
  tearing: `aparecio de golpe, de golpe, apunalad(o/a), partiendose, se abre, se parte, rajadura, desgarramiento, quebrarse, explotado, me atraviesa`,
  trunk: `paletilla, paletillas, las paletillas, entre las paletillas, escapulas, omoplato, pulmones, barriguita, torso, tronco, caja`,
  'leg-fail': `
    fall(ando/aba/aban/aron), ced(iendo/ia/e/io), venci(endo/da), aflojand(o/ose), arrastrand(o/ola/olo),
    se (me/) (iba/va/fue) (sola/solo), sin (respuesta/mando/control), descoordinad(o/a), no
    coordina, ha dejado de (responder/funcionar), dejo de responder, debilitad(o/a), desmayad(a/o), sin empuje`,
  'leg-wont': `no (avanza/acelera/despega/acompana/coordina/camina/salta/da el paso/levanta/se dobla/va/pega), no me (sube/levanta/dobla/empuja/camina/avanza/lleva)`,
  hurt: `dolio, doliendo, dolor, molestia(/s), dolorid(o/a/os/as), escuece, punza, punzan, jala, jalan, calambrazo(/s), corriente(/s), electricidad, entumecimiento, quema, queman`,
  'chest-fail': `aplasta, aplastado, aplastando, oprime, oprimido, oprimiendo, estruja, estrujado, comprime, pesadez, ahorca, se me (parte/para/encoge), pulso raro`,
  fall: `cayendo, caeria, caerse, volcar, volco, chocar, chocado, estrellado, golpearon, golpead(o/a), atropellar, atropellan, resbalado, derrapado, derrapo, rodado, rodando, despenado, despene`,
  swell: `hinchandose, inflamacion, abultad(a/o), engordad(o/a), engordo, calenton, tumefact(o/a), retencion, caldead(a/o)`,
  numb: `durmiendose, durmiendoseme, se me (ha/han) (quedado/dormido/acorchado/adormecido/entumecido), insensibl(e/es), sin vida, ausentes`,
}
