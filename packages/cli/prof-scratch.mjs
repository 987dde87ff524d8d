import {readFileSync} from 'node:fs';
import {towFit} from '@tarebook/rules';
import {programAtHand,sweeping} from '@tarebook/sweep/many';
import {readCatalogue} from '@tarebook/sweep';
import wabt from 'wabt';
const w=await wabt(); const assemble=t=>{const m=w.parseWat('x.wat',t,{simd:true});const b=m.toBinary({}).buffer;m.destroy();return b};
const c=readCatalogue({'vehicles.csv':readFileSync('/tmp/lotz/e6/vehicles.csv','utf8'),'trailers.csv':readFileSync('/tmp/lotz/e6/trailers.csv','utf8')});
const program=await programAtHand(towFit);
const load = { 'load.occupants': [{ weight: '180 lb' }, { weight: '150 lb' }], 'trailer.cargo': [{ label: 'A weekend', weight: '300 lb' }] };
const s=sweeping({facts:load,asOf:'2026-11-01',trailers:c.trailers,withRoom:false,program,assemble});
for(let i=0;i<30;i++){s.judge(c.vehicles);}
